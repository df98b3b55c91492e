// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.job.Wall;
import spadework.measure.Series;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;

/**
 * A finding with the walls of which it says the same, so that nobody reads the same words twice. A stop stays by
 * itself: each is accepted by itself.
 *
 * @param finding the first of them
 * @param part {@code what} or {@code homeowner}
 * @param walls labels of all of them; empty when the finding is about something else
 */
public record FindingGroup(Finding finding, String part, List<String> walls) {

    /** Draws findings together, each group at the place of its first. */
    static List<FindingGroup> of(Dossier dossier, List<Finding> findings, String part) {
        List<String> labels = dossier.job().walls().stream().map(Wall::label).toList();
        Map<String, FindingGroup> groups = new LinkedHashMap<>();
        for (Finding finding : findings) {
            boolean ofWall = finding.severity() != Severity.STOP && labels.contains(finding.about());
            Optional<String> words = ofWall ? dossier.phrases().ofWalls(finding, part, "") : Optional.empty();
            String key = words.map(text -> finding.id() + finding.severity() + finding.citation() + text)
                    .orElse("alone " + groups.size());
            List<String> walls =
                    new ArrayList<>(groups.containsKey(key) ? groups.get(key).walls() : List.of());
            words.ifPresent(text -> walls.add(finding.about()));
            Finding first = groups.containsKey(key) ? groups.get(key).finding() : finding;
            groups.put(key, new FindingGroup(first, part, walls));
        }
        return List.copyOf(groups.values());
    }

    /** The words for several walls, as the office has them; empty for one. */
    Optional<String> text(Phrases phrases) {
        return walls.size() > 1 ? phrases.ofWalls(finding, part, about()) : Optional.empty();
    }

    /** The same in the homeowner's language. */
    Optional<String> text(Phrases phrases, PaperWords terms) {
        return walls.size() > 1 ? phrases.ofWalls(finding, part, terms.row(walls)) : Optional.empty();
    }

    /** What it is about, as {@code A, B, and D}. */
    String about() {
        if (walls.size() < 2) {
            return finding.about();
        }
        return Series.text(walls);
    }
}
