// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A line item or an assembly that no measure asks for, put in by hand.
 *
 * @param quantity how much, in the unit of the item or of what drives the assembly; empty for an assembly that is to
 *     take as much of its driver as is measured
 * @param section label of the section under which it is priced
 * @param reason why it is here
 */
public record ExtraItem(String code, Optional<BigDecimal> quantity, String section, String reason) {}
