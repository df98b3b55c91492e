// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import java.time.LocalDate;
import java.util.regex.Pattern;
import spadework.money.Dollars;

/**
 * Money that came in, as it was receipted.
 *
 * @param number as it is printed, {@code 2026-014-R1}
 * @param how by what means, as "check 1041"
 */
public record Receipt(String number, LocalDate on, Dollars amount, String how) {
    private static final Pattern CHECK = Pattern.compile("(?iu)\\b(check|cheque)\\b");

    /** Whether it came as a check, which pays only once the bank has paid it (UCC 3-310(b)(1), from memory). */
    public boolean isCheck() {
        return CHECK.matcher(how).find();
    }
}
