// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.List;
import spadework.money.Dollars;

/**
 * What became of a change order.
 *
 * @param by who decided for the homeowner
 * @param signatures one of all, or one of each
 * @param price what both sides signed, with any sales tax; it stands, whatever is figured later
 */
public record Decision(LocalDate on, List<String> by, List<Signature> signatures, Dollars price) {

    public Decision {
        by = List.copyOf(by);
        signatures = List.copyOf(signatures);
    }
}
