// SPDX-License-Identifier: Apache-2.0
package spadework.office.reply;

import java.util.List;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.press.template.Templates;

/** Findings as lines for the screen. */
public record FindingLines(Phrases phrases) {

    public static FindingLines bundled() {
        return new FindingLines(new Phrases(Templates.bundled().words("words/findings.properties")));
    }

    public List<String> described(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.severity() + " " + finding.id() + ": " + phrases.what(finding) + " "
                        + phrases.action(finding)
                        + phrases.paid(finding).map(paid -> " " + paid).orElse("")
                        + " [" + finding.citation() + "]")
                .toList();
    }
}
