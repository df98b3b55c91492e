// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.Point;
import spadework.job.SiteLimit;
import spadework.takeoff.CrossSection;
import spadework.trench.BankLine;
import spadework.trench.TrenchLimits;

/**
 * A section on the sheet. Feet are counted outward from the wall's outer face and downward from grade.
 *
 * @param face the wall's outer face, points
 * @param grade the ground, points
 * @param scale points a foot, the same across and down
 */
public record SectionFrame(CrossSection section, double face, double grade, double scale) {
    static final double WIDTH = 470;
    static final double EDGE = 8;

    /** Wall thickness is not measured: it is drawn as a block of 8 in nominal. */
    static final double WALL_FEET = 8.0 / 12;

    /** Spoil stays that far from the edge: 29 CFR 1926.651(j)(2) (T-17). */
    static final double SPOIL_BACK_FEET = TrenchLimits.SPOIL_BACK.feet();

    static final double SPOIL_WIDE_FEET = 3;

    /** Room left of the house for two measures with their words, and for a piece of floor. */
    private static final double MEASURES = 146;

    /** Room beside the trench for the names of its parts. */
    private static final double NAMES = 202;

    private static final double TITLE = 20;
    private static final double AIR = 44;
    private static final double DEEPEST = 176;
    private static final double LARGEST = 32;

    static SectionFrame of(CrossSection section) {
        double projection = section.footing().projection().feet();
        double inside = WALL_FEET + projection;
        double outside = section.reach().feet() + SPOIL_BACK_FEET + SPOIL_WIDE_FEET;
        double across = (WIDTH - MEASURES - EDGE) / (inside + outside);
        double beside = (WIDTH - MEASURES - EDGE - NAMES)
                / (inside + projection + section.bottomWidth().feet());
        double down = DEEPEST / section.trenchDepth().feet();
        double scale = Math.min(Math.min(LARGEST, beside), Math.min(across, down));
        return new SectionFrame(section, MEASURES + inside * scale, TITLE + AIR, scale);
    }

    Point at(double out, double down) {
        return new Point(face + out * scale, grade + down * scale);
    }

    /** Where something before the wall meets grade; empty where that is off the sheet. */
    Optional<Point> markOf(SiteLimit limit) {
        Point foot = at(limit.distance().feet(), 0);
        return foot.x() < WIDTH - EDGE ? Optional.of(foot) : Optional.empty();
    }

    double slope() {
        return section.bank().slope().number();
    }

    BankLine line() {
        return section.bank().line(section.trenchDepth());
    }

    double projection() {
        return section.footing().projection().feet();
    }

    /** Grade to the footing's top. */
    double top() {
        return section.depth().feet();
    }

    /** Grade to the footing's bottom, which is the trench's bottom. */
    double bottom() {
        return section.trenchDepth().feet();
    }

    /** From the wall's face to the foot of the bank. */
    double toe() {
        return projection() + section.bottomWidth().feet();
    }

    /** From the wall's face to the bank, that deep. */
    double bank(double down) {
        return toe() + line().out(bottom() - down);
    }

    /** The bank between two depths under grade, from the upper to the lower. */
    List<Point> bank(double upper, double lower) {
        List<Point> points = new ArrayList<>(List.of(at(bank(upper), upper)));
        List<Double> steps = line().steps();
        for (int i = steps.size() - 1; i >= 0; i--) {
            double down = bottom() - steps.get(i);
            if (down > upper && down < lower) {
                points.add(at(toe() + line().out(steps.get(i) + 0.01), down));
                points.add(at(bank(down), down));
            }
        }
        points.add(at(bank(lower), lower));
        return points;
    }

    /** The least depth under grade from which on the bank stands no farther out than that. */
    double within(double out) {
        if (!line().isBenched()) {
            return slope() == 0 ? 0 : bottom() - (out - toe()) / slope();
        }
        return line().steps().stream()
                .filter(step -> toe() + line().out(step + 0.01) > out)
                .findFirst()
                .map(step -> bottom() - step)
                .orElse(0.0);
    }

    /** The deepest line of the figure, points. */
    double foot() {
        return grade + bottom() * scale;
    }
}
