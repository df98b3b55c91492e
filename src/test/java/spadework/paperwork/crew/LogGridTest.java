// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spadework.paperwork.Dossier;
import spadework.samples.Samples;
import spadework.schedule.CrewCalendar;

/** Walls that are asked the same stand in one table, four of them on a page. */
class LogGridTest {
    private static LogPart wall(String label, String... asked) {
        return new LogPart(
                LogKind.WALL,
                "Wall " + label,
                label,
                Stream.of(asked)
                        .map(what -> new LogRow(label + "/" + what, what, label + " " + what))
                        .toList());
    }

    @Test
    void wallsThatAreAskedTheSameStandSideBySide() {
        List<LogGrid> grids = LogGrid.of(List.of(wall("A", "x", "y"), wall("B", "x", "y"), wall("C", "x")));
        assertThat(grids).extracting(LogGrid::columns).containsExactly(List.of("Wall A", "Wall B"), List.of("Wall C"));
        assertThat(grids).extracting(LogGrid::tab).containsExactly("A - B", "C");
        assertThat(grids.get(0).rows())
                .containsExactly(
                        new LogGrid.Row("x", List.of("A x", "B x")), new LogGrid.Row("y", List.of("A y", "B y")));
    }

    @Test
    void fifthWallStandsInATableOfItsOwn() {
        List<LogPart> walls = IntStream.range(0, 5)
                .mapToObj(i -> wall(Character.toString('A' + i), "x"))
                .toList();
        assertThat(LogGrid.of(walls)).extracting(LogGrid::tab).containsExactly("A - D", "E");
        assertThat(LogGrid.of(List.of())).isEmpty();
    }

    /** 40 mil dry of 60% solids come to 67 mil wet; a gauge reads one of the two coats. */
    @Test
    void filmIsPlannedByTheCoatAsAGaugeReadsIt() {
        Dossier dossier =
                Samples.bid(Path.of("sample-quotes/poured-basement-with-sump")).dossier();
        CrewCalendar calendar = CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
        assertThat(CrewLog.of(dossier, calendar).stream().flatMap(part -> part.rows().stream()))
                .filteredOn(row -> row.key().endsWith("/wet"))
                .hasSize(8)
                .extracting(LogRow::planned)
                .containsOnly("34 mil or more; 67 mil in all coats");
    }

    @Test
    void endsOfAWallAreNamed() {
        Dossier dossier =
                Samples.bid(Path.of("sample-quotes/block-basement-to-swale")).dossier();
        CrewCalendar calendar = CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
        assertThat(CrewLog.of(dossier, calendar).stream().flatMap(part -> part.rows().stream()))
                .filteredOn(row -> row.key().contains("/depth"))
                .extracting(LogRow::planned)
                .containsExactly(
                        "4 ft 8 in, west end", "5 ft 6 in, east end", "5 ft 6 in, north end", "4 ft, south end");
    }
}
