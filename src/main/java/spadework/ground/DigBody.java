// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
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

    /** The same where all of it lies within another body. */
    DigBody within() {
        return new DigBody(kind, label, stations, width, bank, depthFrom, typed, false);
    }

    public double length() {
        return stations.get(stations.size() - 1).at();
    }

    /** Grade to the bottom at the deepest place. */
    public Length deepest() {
        double deepest = 0;
        for (BodyStation station : stations) {
            deepest = Math.max(deepest, station.depth());
        }
        return Length.ofFeet(deepest);
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
            // Where a pipe has come out of the ground nothing is dug.
            if (a.depth() <= 0 && b.depth() <= 0) {
                continue;
            }
            double sides = kind == BodyKind.WALL ? 1 : 2;
            sum += (b.at() - a.at()) * (width + sides * meanOut(a.depth(), b.depth()));
        }
        return sum;
    }

    /** Of a piece that is laid back as a whole or not at all: the bank may begin or end at one of its stations. */
    private double meanOut(double one, double other) {
        double middle = (one + other) / 2;
        if (!isLaidBack(middle)) {
            return 0;
        }
        return line().isBenched() ? line().out(middle) : (line().out(one) + line().out(other)) / 2;
    }

    /**
     * Plan area of a run's trench so far under grade, square feet, between two places along it; 0 where the second does
     * not lie beyond the first.
     */
    double area(double down, double from, double to) {
        double sum = 0;
        for (int i = 1; i < stations.size(); i++) {
            double first = Math.max(stations.get(i - 1).at(), from);
            double last = Math.min(stations.get(i).at(), to);
            if (last > first) {
                sum += area(i, down, List.of(first, last));
            }
        }
        return sum;
    }

    /** Within the piece that ends at a station, cut where the bottom or a step of the bank comes to that level. */
    private double area(int station, double down, List<Double> span) {
        BodyStation a = stations.get(station - 1);
        BodyStation b = stations.get(station);
        List<Double> cuts = new ArrayList<>(span);
        List<Double> steps = new ArrayList<>(line().steps());
        steps.add(0.0);
        for (double step : steps) {
            double rise = b.depth() - a.depth();
            double at = a.at() + (b.at() - a.at()) * (down + step - a.depth()) / rise;
            if (rise != 0 && at > span.get(0) && at < span.get(1)) {
                cuts.add(at);
            }
        }
        cuts.sort(Double::compare);
        boolean laidBack = isLaidBack((a.depth() + b.depth()) / 2);
        double sum = 0;
        for (int i = 1; i < cuts.size(); i++) {
            double over = a.depthTo(b, (cuts.get(i - 1) + cuts.get(i)) / 2) - down;
            if (over > 0) {
                sum += (cuts.get(i) - cuts.get(i - 1)) * (width + (laidBack ? 2 * line().out(over) : 0));
            }
        }
        return sum;
    }
}
