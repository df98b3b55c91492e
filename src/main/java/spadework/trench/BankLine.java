// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import java.util.ArrayList;
import java.util.List;

/**
 * How far a bank stands out from the foot of its trench, from the bottom up. A sloped one runs out evenly. A benched
 * one stands upright in its first rise and has every further step wholly behind the slope, so that it is nowhere
 * steeper. All in feet, none negative.
 *
 * @param slope run for each rise; 0 for an upright bank
 * @param rise height of each step; 0 where the bank is not benched
 * @param top height of the trench at its deepest place, where the last step ends; counts for benches alone
 */
public record BankLine(double slope, double rise, double top) {

    public static BankLine straight(double slope) {
        return new BankLine(slope, 0, 0);
    }

    public boolean isBenched() {
        return rise > 0;
    }

    /** How far out the bank stands that high over the bottom. */
    public double out(double height) {
        if (!isBenched()) {
            return slope * height;
        }
        if (height <= rise + Bank.HAIR) {
            return 0;
        }
        return slope * Math.min(top, Math.ceil(height / rise - Bank.HAIR) * rise);
    }

    /** Area between the bank and an upright one, from the bottom up to that height; square feet. */
    public double area(double height) {
        if (!isBenched()) {
            return slope * height * height / 2;
        }
        double area = 0;
        for (double from : steps()) {
            area += Math.max(Math.min(from + rise, height) - from, 0) * slope * Math.min(from + rise, top);
        }
        return area;
    }

    /** Heights at which a step begins, first the lowest; none where the bank is not benched. */
    public List<Double> steps() {
        List<Double> steps = new ArrayList<>();
        for (double from = rise; isBenched() && from < top - Bank.HAIR; from += rise) {
            steps.add(from);
        }
        return steps;
    }

    /** Whether both run alike, but for the noise of floating point. */
    public boolean isLike(BankLine other) {
        return Math.abs(slope - other.slope) < 1e-9
                && Math.abs(rise - other.rise) < 1e-9
                && Math.abs(top - other.top) < 1e-9;
    }
}
