// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import java.util.Optional;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.BankLine;

/**
 * A body of ground that is dug out.
 *
 * @param label of the wall, run, outlet or pit
 * @param stations from its start to its end; where the bank is benched, one more wherever another step begins
 * @param width of the bottom in feet
 * @param bank as it is dug; on a trench away from the house both banks are alike, and it is laid back only where the
 *     depth reaches {@link Bank#PROTECTED_FROM}
 * @param typed the mean depth that somebody typed, where levels say something too
 * @param entered whether people work in it; what lies within another body is not entered by itself
 */
public record DigBody(
        BodyKind kind,
        String label,
        List<BodyStation> stations,
        double width,
        Bank bank,
        DepthFrom depthFrom,
        Optional<Length> typed,
        boolean entered) {

    public DigBody {
        stations = List.copyOf(stations);
    }

    public double length() {
        return stations.get(stations.size() - 1).at();
    }

    /** Grade to the bottom at the deepest place. */
    public Length deepest() {
        return Length.ofFeet(
                stations.stream().mapToDouble(BodyStation::depth).max().orElse(0));
    }

    /** Mean depth along it. */
    public Length meanDepth() {
        double sum = 0;
        for (int i = 1; i < stations.size(); i++) {
            BodyStation a = stations.get(i - 1);
            BodyStation b = stations.get(i);
            sum += (b.at() - a.at()) * (a.depth() + b.depth()) / 2;
        }
        return Length.ofFeet(length() > 0 ? sum / length() : stations.get(0).depth());
    }

    /** The line of its bank. */
    public BankLine line() {
        return bank.line(deepest());
    }

    /** How far the bank's edge at grade lies behind an upright bank, where the body is that deep; feet. */
    public double out(double depth) {
        return isLaidBack(depth) ? line().out(depth) : 0;
    }

    /** Whether its bank is laid back or cut in steps where it is that deep. */
    public boolean isLaidBack(double depth) {
        return bank.slope().number() > 0 && (kind == BodyKind.WALL || Bank.isProtectedAt(depth));
    }

    /** Run of the bank for each rise where the body is that deep. */
    public double slopeAt(double depth) {
        return isLaidBack(depth) ? bank.slope().number() : 0;
    }

    /** Area of the outline at grade, square feet. */
    public double areaAtGrade() {
        double sum = 0;
        for (int i = 1; i < stations.size(); i++) {
            BodyStation a = stations.get(i - 1);
            BodyStation b = stations.get(i);
            double sides = kind == BodyKind.WALL ? 1 : 2;
            double out = line().isBenched() ? out((a.depth() + b.depth()) / 2) : (out(a.depth()) + out(b.depth())) / 2;
            sum += (b.at() - a.at()) * (width + sides * out);
        }
        return sum;
    }
}
