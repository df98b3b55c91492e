// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.WallEnd;
import spadework.trench.BankLine;

class OverlapsTest {
    /** Where every wall is as long as its trenches are wide, corner terms alone are exact. */
    @Test
    void nothingIsSharedBeyondTheCornersOfAPlainHouse() {
        assertThat(around("30 R 20 R 30 R 20 R", 17.0 / 3, 1)).isEmpty();
        assertThat(around("13 L 3 R 4 R 3 L 13 R 20 R 30 R 20 R", 17.0 / 3, 1)).isEmpty();
    }

    /**
     * A court 6 ft wide and 10 ft deep: each trench reaches w = 2.5 + s × z, so both fill the court from the height at
     * which 2 w = 6; the signed sum then counts 10 × (2 w − 6) too often. Integral over z up to 5.667: at slope 1 from
     * 0.5, 10 × 5.1667² = 266.94 cf; at 1.5 from 0.3333, 15 × 5.3333² = 426.67 cf.
     */
    @ParameterizedTest(name = "slope {0}: {1} cf")
    @CsvSource({"0, 0", "1, -266.9444", "1.5, -426.6667"})
    void aNarrowCourtIsDugOnce(double slope, double expected) {
        List<Overlap> court = around("17 R 40 R 40 R 40 R 17 R 10 L 6 L 10 R", 17.0 / 3, slope);
        double sum = court.stream().mapToDouble(Overlap::volume).sum();
        assertThat(sum).isCloseTo(expected, within(1e-3));
    }

    /** Wall lengths with the turn after each, R outside and L inside; closed where a turn follows the last. */
    static List<Overlap> around(String plan, double height, double slope) {
        String[] words = plan.split(" ");
        List<Strip> strips = new ArrayList<>();
        List<Corner> corners = new ArrayList<>();
        int walls = (words.length + 1) / 2;
        for (int i = 0; i < walls; i++) {
            double length = Double.parseDouble(words[2 * i]);
            List<Top> tops = List.of(new Top(0, height), new Top(length, height));
            strips.add(new Strip("W" + i, 0.5, 2, BankLine.straight(slope), 2.0 / 3, tops));
            if (2 * i + 1 < words.length) {
                corners.add(new Corner(
                        new WallEnd("W" + i, true),
                        new WallEnd("W" + (i + 1) % walls, false),
                        words[2 * i + 1].equals("R") ? CornerKind.OUTSIDE : CornerKind.INSIDE));
            }
        }
        return Overlaps.of(strips, corners);
    }
}
