package spadework.office;

import java.util.List;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.press.Templates;

/** Findings as lines for the screen. */
record FindingWords(Phrases phrases) {

    static FindingWords bundled() {
        return new FindingWords(new Phrases(Templates.bundled().words("words/findings.properties")));
    }

    List<String> told(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.severity() + " " + finding.id() + ": " + phrases.what(finding) + " "
                        + phrases.action(finding) + " [" + finding.citation() + "]")
                .toList();
    }
}
