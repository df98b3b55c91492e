// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.Point;
import spadework.measure.Length;

/**
 * A profile on the sheet.
 *
 * @param across points a foot along the pipe
 * @param exaggeration how many times larger heights are drawn than lengths
 * @param low the level at the figure's bottom
 * @param high the level at its top
 * @param step feet from one level line to the next
 */
public record ProfileFrame(double across, double exaggeration, double low, double high, double step) {
    static final double WIDTH = 470;
    static final double EDGE = 8;
    static final double LEFT = 112;
    static final double TOP = 26;

    private static final double LEAST_RANGE = 1;
    private static final double UNDER = 12;
    private static final double OVER = 14;
    private static final double RIGHT = 92;
    private static final double HIGHEST = 120;
    private static final double[] TIMES = {
        1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 500
    };
    private static final double[] STEPS = {0.25, 0.5, 1, 2, 5, 10, 20};
    private static final double STEP_POINTS = 18;

    static ProfileFrame of(ProfileChain chain) {
        List<Double> levels = levels(chain);
        double least = levels.stream().mapToDouble(level -> level).min().orElse(0);
        double most = levels.stream().mapToDouble(level -> level).max().orElse(0);
        double range = Math.max(LEAST_RANGE, most - least);
        double across = Math.min((WIDTH - LEFT - RIGHT) / chain.feet(), HIGHEST / range);
        double times = TIMES[0];
        for (double candidate : TIMES) {
            times = candidate * across * range <= HIGHEST ? candidate : times;
        }
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            step = STEPS[i] * across * times >= STEP_POINTS ? STEPS[i] : step;
        }
        double upright = across * times;
        return new ProfileFrame(across, times, least - UNDER / upright, least + range + OVER / upright, step);
    }

    /** Every level that is known, feet. */
    static List<Double> levels(ProfileChain chain) {
        List<Double> levels = new ArrayList<>();
        for (ProfileReach reach : chain.reaches()) {
            for (Optional<Length> invert : List.of(reach.startInvert(), reach.endInvert())) {
                invert.ifPresent(known -> levels.add(known.feet()));
                invert.ifPresent(
                        known -> levels.add(known.plus(reach.insideDiameter()).feet()));
            }
            for (Optional<Length> grade : List.of(reach.startGrade(), reach.endGrade())) {
                grade.ifPresent(known -> levels.add(known.feet()));
            }
            reach.between().forEach(point -> levels.add(point.level().feet()));
        }
        chain.outletLevel().ifPresent(level -> levels.add(level.feet()));
        return levels;
    }

    /** No higher than the line of words that stands in place of the figure. */
    ProfileFrame withoutHeights() {
        return new ProfileFrame(across, 1, 0, 16 / across, 1);
    }

    /** Points a foot of height. */
    double upright() {
        return across * exaggeration;
    }

    Point at(double station, double level) {
        return new Point(LEFT + station * across, TOP + (high - level) * upright());
    }

    double foot() {
        return TOP + (high - low) * upright();
    }
}
