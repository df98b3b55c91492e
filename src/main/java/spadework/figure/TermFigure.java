// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.law.WarrantyTerm;

/** The last day of a warranty. */
public final class TermFigure {
    private TermFigure() {}

    /**
     * The last day of a term that starts on the day of completion.
     *
     * @param years 1 to 99
     */
    public static Answer of(LocalDate completed, int years) {
        LocalDate last = WarrantyTerm.lastDay(completed, years);
        String calculation = years + " years from " + completed
                + ", that day counted; a start on 29 February ends on the 28th of a year without one";
        return Answer.lawful(
                List.of(AnswerValue.of("last day of the term", last)),
                List.of(Applied.day("term", calculation, last, "common practice, no source", "M")),
                List.of(new Finding("term-start", Severity.MUST, "", Map.of(), "16 CFR 701.3(a)(4)")));
    }
}
