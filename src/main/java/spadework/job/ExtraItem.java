package spadework.job;

import java.math.BigDecimal;

/**
 * A line item that no measure asks for, put in by hand.
 *
 * @param section label of the section under which it is priced
 * @param reason why it is here
 */
public record ExtraItem(String code, BigDecimal quantity, String section, String reason) {}
