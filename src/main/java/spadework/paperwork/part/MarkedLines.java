// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.job.LimitKind;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.paperwork.Dossier;

/** The marked lines of a job with the trenches that the rules found near each of them. */
public final class MarkedLines {
    private MarkedLines() {}

    /** In the order of the job. */
    public static List<MarkedLine> of(Dossier dossier) {
        return dossier.job().site().limits().stream()
                .filter(limit -> limit.kind() == LimitKind.UTILITY)
                .map(limit -> new MarkedLine(limit.wall(), limit.distance().text(), limit.note(), near(dossier, limit)))
                .toList();
    }

    /** Those that the trench of a wall or of a pipe comes near. */
    public static List<MarkedLine> at(Dossier dossier, String label) {
        return of(dossier).stream()
                .filter(line -> line.wall().equals(label) || line.near().contains(label))
                .toList();
    }

    /** Those that trenches of pipes come near, each with these trenches alone. */
    public static List<MarkedLine> atPipes(Dossier dossier) {
        Set<String> walls = dossier.job().walls().stream().map(Wall::label).collect(Collectors.toSet());
        return of(dossier).stream()
                .map(line -> new MarkedLine(
                        line.wall(),
                        line.distance(),
                        line.note(),
                        line.near().stream()
                                .filter(label -> !walls.contains(label))
                                .toList()))
                .filter(line -> !line.near().isEmpty())
                .toList();
    }

    private static List<String> near(Dossier dossier, SiteLimit line) {
        return dossier.findings().site().stream()
                .filter(finding -> finding.id().equals("hand-dig-trench") && isAbout(finding, line))
                .flatMap(finding -> labels(finding.about()))
                .distinct()
                .toList();
    }

    private static boolean isAbout(Finding finding, SiteLimit line) {
        return line.wall().equals(finding.values().get("wall"))
                && line.distance().text().equals(finding.values().get("distance"))
                && line.note().equals(finding.values().get("note"));
    }

    private static Stream<String> labels(String about) {
        return Arrays.stream(about.split(", "));
    }
}
