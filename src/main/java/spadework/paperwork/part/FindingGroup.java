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
 * @param named what it is about, as {@code A, B, and D}
 */
public record FindingGroup(Finding finding, String part, List<String> walls, String named) {

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
            groups.put(key, new FindingGroup(first, part, walls, Series.text(walls)));
        }
        return List.copyOf(groups.values());
    }

    /** The words for several walls; empty for one. */
    Optional<String> text(Phrases phrases) {
        return walls.size() > 1 ? phrases.ofWalls(finding, part, named) : Optional.empty();
    }

    /** Each of what it is about. */
    List<String> labels() {
        return walls.size() < 2 ? List.of(finding.about().split(", ")) : walls;
    }

    /** The same with the finding said in the words of a paper. */
    FindingGroup in(PaperWords terms) {
        String row = walls.size() < 2 ? finding.about() : terms.row(walls);
        return new FindingGroup(FindingValues.in(terms, finding), part, walls, row);
    }
}
