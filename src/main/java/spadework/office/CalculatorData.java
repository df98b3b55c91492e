// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.List;
import spadework.figure.Answer;
import spadework.figure.AnswerText;
import spadework.figure.BookFigures;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.intake.Intake;
import spadework.intake.law.StateRuleBook;
import spadework.intake.value.States;
import spadework.law.HouseLaw;
import spadework.listing.FigureListing;
import spadework.measure.UnreadableMeasure;
import spadework.press.template.Templates;

/** What the calculators need from the bundled price book and the bundled words, and how their answers are told. */
public final class CalculatorData {
    private final BookFigures book = new BookFigures(new Intake().bundledBook());
    private final StateRuleBook states = StateRuleBook.bundled();
    private final Phrases phrases = new Phrases(Templates.bundled().words("words/findings.properties"));

    /** The law of a state that comes with the program. */
    public HouseLaw law(String state) {
        return states.at(state);
    }

    /**
     * Reads the two letters of a state.
     *
     * @throws UnreadableMeasure if the text is no state's
     */
    public String state(String text) throws UnreadableMeasure {
        return States.read(text);
    }

    /** What the calculators take from the bundled price book. */
    public BookFigures book() {
        return book;
    }

    /** The answer as text: figures, working, and what has to be known with them. */
    public List<String> text(Answer answer) {
        List<String> lines = new ArrayList<>(AnswerText.values(answer));
        lines.add("");
        lines.add("Working:");
        AnswerText.working(answer).forEach(line -> lines.add("  " + line));
        if (!described(answer).isEmpty()) {
            lines.add("");
            lines.addAll(described(answer));
        }
        return lines;
    }

    /** The answer as JSON. */
    public String listing(Answer answer) {
        List<String> working = new ArrayList<>(AnswerText.working(answer));
        working.addAll(described(answer));
        return FigureListing.of(answer, working);
    }

    private List<String> described(Answer answer) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : answer.findings()) {
            lines.add(finding.severity() + " " + finding.id() + ": " + phrases.what(finding) + " "
                    + phrases.action(finding) + " [" + finding.citation() + "]");
        }
        if (!answer.rules().isEmpty()) {
            lines.add(phrases.lawDeference());
        } else if (!lines.isEmpty()) {
            lines.add(phrases.deference());
        }
        return lines;
    }
}
