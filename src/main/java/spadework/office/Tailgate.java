package spadework.office;

import java.util.ArrayList;
import java.util.List;
import spadework.figure.Answer;
import spadework.figure.BookFigures;
import spadework.figure.Plain;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.intake.Intake;
import spadework.listing.FigureListing;
import spadework.press.Templates;

/** What the calculators need from the bundled price book and the bundled words, and how their answers are told. */
public final class Tailgate {
    private final BookFigures book = new BookFigures(new Intake().bundledBook());
    private final Phrases phrases = new Phrases(Templates.bundled().words("words/findings.properties"));

    /** What the calculators take from the bundled price book. */
    public BookFigures book() {
        return book;
    }

    /** The answer as text: figures, working, and what has to be known with them. */
    public List<String> text(Answer answer) {
        List<String> lines = new ArrayList<>(Plain.values(answer));
        lines.add("");
        lines.add("Working:");
        Plain.working(answer).forEach(line -> lines.add("  " + line));
        if (!answer.findings().isEmpty()) {
            lines.add("");
            lines.addAll(told(answer));
        }
        return lines;
    }

    /** The answer as JSON. */
    public String listing(Answer answer) {
        List<String> working = new ArrayList<>(Plain.working(answer));
        working.addAll(told(answer));
        return FigureListing.of(answer, working);
    }

    private List<String> told(Answer answer) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : answer.findings()) {
            lines.add(finding.severity() + " " + finding.id() + ": " + phrases.what(finding) + " "
                    + phrases.action(finding) + " [" + finding.citation() + "]");
        }
        if (!lines.isEmpty()) {
            lines.add(phrases.deference());
        }
        return lines;
    }
}
