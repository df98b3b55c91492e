// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.time.LocalDate;
import spadework.law.ReadStatus;
import spadework.money.Dollars;

/**
 * A rule of law that was applied.
 *
 * @param rule whose rule it is, as {@code MD} or {@code US-FTC}
 * @param calculation what it says and what that comes to here
 * @param citation where it stands
 * @param status how far it was read
 */
public record Applied(String rule, String calculation, String citation, String status) {

    static Applied day(String rule, String calculation, LocalDate day, String citation, String status) {
        return new Applied(rule, calculation + " = " + day, citation, status);
    }

    static Applied money(String rule, String calculation, Dollars amount, String citation, String status) {
        return new Applied(rule, calculation + " = " + amount.text(), citation, status);
    }

    /** The whole on one line. */
    String line() {
        return rule + ": " + calculation + "  [" + citation + "; " + read() + "]";
    }

    private String read() {
        return status.equals("R") ? ReadStatus.words(status) : ReadStatus.words(status) + ": not verified, ask counsel";
    }
}
