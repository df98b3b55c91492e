// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.job.WallPlace;
import spadework.job.Water;

/** A dug corner that no one drain goes round has neither pipe nor stone (IRC R405.1). */
class DugCornersTest {
    @ParameterizedTest(name = "{0} corner, drains along {1} and {2}: {3}")
    @CsvSource(textBlock = """
            OUTSIDE, A B, '',  false
            OUTSIDE, A,   B,   true
            OUTSIDE, A,   '',  true
            OUTSIDE, B,   '',  true
            OUTSIDE, '',  '',  false
            INSIDE,  A,   B,   false
            """)
    void corners(CornerKind kind, String first, String second, boolean expected) {
        Job job = Jobs.withCorners(
                Jobs.job(Jobs.site(), water(first, second), Jobs.wall(), side()),
                List.of(new Corner(new WallEnd("A", true), new WallEnd("B", false), kind)));
        List<String> ids = Checked.findings(job).stream().map(f -> f.id()).toList();
        assertThat(ids.contains("corner-undrained")).isEqualTo(expected);
    }

    private static Water water(String... drains) {
        Water w = Jobs.water();
        return new Water(
                Arrays.stream(drains)
                        .filter(along -> !along.isEmpty())
                        .map(DugCornersTest::drain)
                        .toList(),
                w.mains(),
                w.roofLines(),
                w.downspouts(),
                w.outlets(),
                w.candidates());
    }

    private static FootingDrain drain(String along) {
        return new FootingDrain(
                "D" + along.charAt(0),
                List.of(along.split(" ")),
                Optional.empty(),
                TeeAt.END,
                "M1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Wall side() {
        Wall w = Jobs.wall();
        return new Wall(
                "B",
                "side wall",
                new WallPlace(Side.EAST, w.from(), w.length()),
                w.depth(),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
    }

    /** A drain along one wall drains no other. */
    @Test
    void wallWithoutADrainIsNamed() {
        Job job = Jobs.job(Jobs.site(), water("A", ""), Jobs.wall(), side());
        assertThat(Checked.findings(job))
                .filteredOn(finding -> finding.id().equals("wall-undrained"))
                .extracting(finding -> finding.about())
                .containsExactly("B");
    }
}
