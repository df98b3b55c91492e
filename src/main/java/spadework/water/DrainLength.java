// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.ArrayList;
import java.util.List;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** How long a footing drain is: the walls, and at each corner what the pipe's center line gains or loses. */
public final class DrainLength {
    /** At most this many feet from cleanout to cleanout; common practice, no source. */
    public static final int CLEANOUT_FEET = 100;

    private DrainLength() {}

    /** The length in feet of the pipe's center line. */
    public static Worked of(Job job, FootingDrain drain) {
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (String label : drain.along()) {
            Wall wall = job.getWall(label);
            String symbol = "L" + (inputs.size() + 1);
            inputs.add(Given.of(
                    symbol, "length of wall " + label, wall.length().feet(), Unit.FOOT, at(job, wall) + "/length"));
            formula.append(formula.isEmpty() ? "" : " + ").append(symbol);
            sum += wall.length().feet();
        }
        for (Corner corner : corners(job, drain)) {
            Worked offset = offset("c" + (inputs.size() + 1), job, corner);
            inputs.add(offset);
            boolean adds = corner.kind() == CornerKind.OUTSIDE;
            formula.append(adds ? " + " : " − ").append(offset.symbol());
            sum += adds ? offset.number() : -offset.number();
        }
        return Worked.of(
                "Lp",
                "perforated pipe",
                sum,
                Unit.FOOT,
                new Formula(formula.toString(), "center line of the pipe"),
                inputs.toArray(Working[]::new));
    }

    /** The corners between two of the drain's walls. */
    public static List<Corner> corners(Job job, FootingDrain drain) {
        return job.corners().stream()
                .filter(corner -> drain.along().contains(corner.first().wall())
                        && drain.along().contains(corner.second().wall()))
                .toList();
    }

    /** What the center line gains at a corner in feet; negative at an inside corner. */
    static double gain(Job job, Corner corner) {
        double both = offset("c", job, corner).number();
        return corner.kind() == CornerKind.OUTSIDE ? both : -both;
    }

    /** Both walls' offset of the pipe from the wall's face, p + B ÷ 2. */
    private static Worked offset(String symbol, Job job, Corner corner) {
        Wall a = job.getWall(corner.first().wall());
        Wall b = job.getWall(corner.second().wall());
        return Worked.of(
                symbol,
                "corner " + a.label() + " to " + b.label(),
                offset(a) + offset(b),
                Unit.FOOT,
                new Formula("p1 + B1 ÷ 2 + p2 + B2 ÷ 2", "offset of the pipe's center line from both faces"),
                projection(job, a, "p1"),
                width(job, a, "B1"),
                projection(job, b, "p2"),
                width(job, b, "B2"));
    }

    private static double offset(Wall wall) {
        return wall.footing().projection().feet() + wall.digging().bottomWidth().feet() / 2;
    }

    private static Given projection(Job job, Wall wall, String symbol) {
        return Given.of(
                symbol,
                "projection of the footing",
                wall.footing().projection().feet(),
                Unit.FOOT,
                at(job, wall) + "/footing/projection");
    }

    private static Given width(Job job, Wall wall, String symbol) {
        return Given.of(
                symbol,
                "width of the trench's bottom",
                wall.digging().bottomWidth().feet(),
                Unit.FOOT,
                at(job, wall) + "/digging/bottomWidth");
    }

    private static String at(Job job, Wall wall) {
        return "/walls/" + job.indexOfWall(wall.label());
    }
}
