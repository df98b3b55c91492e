package spadework.figure;

import java.time.LocalDate;
import spadework.law.Read;
import spadework.money.Dollars;

/**
 * A rule of law that was applied.
 *
 * @param rule whose rule it is, as {@code MD} or {@code US-FTC}
 * @param reckoning what it says and what that comes to here
 * @param citation where it stands
 * @param status how far it was read
 */
public record Applied(String rule, String reckoning, String citation, String status) {

    static Applied day(String rule, String reckoning, LocalDate day, String citation, String status) {
        return new Applied(rule, reckoning + " = " + day, citation, status);
    }

    static Applied money(String rule, String reckoning, Dollars amount, String citation, String status) {
        return new Applied(rule, reckoning + " = " + amount.text(), citation, status);
    }

    /** The whole on one line. */
    String line() {
        return rule + ": " + reckoning + "  [" + citation + "; " + read() + "]";
    }

    private String read() {
        return status.equals("R") ? Read.words(status) : Read.words(status) + ": not verified, ask counsel";
    }
}
