package spadework.job;

import java.time.LocalDate;
import java.util.List;
import spadework.money.Dollars;

/**
 * What became of a change order.
 *
 * @param by who decided for the homeowner
 * @param price what both sides signed, with any sales tax; it stands, whatever is figured later
 */
public record Decision(LocalDate on, List<String> by, Signature signature, Dollars price) {

    public Decision {
        by = List.copyOf(by);
    }
}
