// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.pricebook.Driver;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** Counts what assemblies follow. */
public final class Drivers {
    private Drivers() {}

    static String name(Driver driver) {
        return switch (driver) {
            case FOOT_OF_WALL -> "foot of wall";
            case FOOT_OF_TRENCH -> "foot of trench";
            case CORNER -> "corner";
            case DOWNSPOUT -> "downspout";
            case JOB -> "job";
        };
    }

    /**
     * How much there is of a driver.
     *
     * @param walls whose it is
     */
    static Worked count(Driver driver, Job job, List<Wall> walls) {
        return switch (driver) {
            case FOOT_OF_WALL ->
                sum(driver, walls.stream().map(one -> length(job, one)).toList());
            case FOOT_OF_TRENCH ->
                sum(driver, walls.stream().map(one -> trench(job, one)).toList());
            case CORNER -> counted(driver, corners(job, walls), "/corners");
            case DOWNSPOUT -> counted(driver, job.water().downspouts().size(), "/water/downspouts");
            case JOB -> counted(driver, 1, "each job");
        };
    }

    private static long corners(Job job, List<Wall> walls) {
        List<String> labels = walls.stream().map(Wall::label).toList();
        return job.corners().stream()
                .filter(corner -> labels.contains(corner.first().wall()))
                .count();
    }

    /** The wall and, at each corner, what the center line of its trench gains or loses, p + B ÷ 2. */
    private static Working trench(Job job, Wall wall) {
        List<Working> inputs = new ArrayList<>(List.of(length(job, wall)));
        String at = "/walls/" + job.indexOfWall(wall.label());
        Given p = Given.of(
                "p",
                "projection of the footing",
                wall.footing().projection().feet(),
                Unit.FOOT,
                at + "/footing/projection");
        Given b = Given.of(
                "B",
                "width of the trench's bottom",
                wall.digging().bottomWidth().feet(),
                Unit.FOOT,
                at + "/digging/bottomWidth");
        inputs.add(p);
        inputs.add(b);
        long net = 0;
        for (Corner corner : job.corners()) {
            boolean touches = corner.first().wall().equals(wall.label())
                    || corner.second().wall().equals(wall.label());
            net += touches ? corner.kind() == CornerKind.OUTSIDE ? 1 : -1 : 0;
        }
        inputs.add(
                Given.of("k", "outside corners less inside corners at the wall", (double) net, Unit.EACH, "/corners"));
        double length = wall.length().feet() + net * (p.number() + b.number() / 2);
        return Worked.of(
                "T",
                "trench at wall " + wall.label(),
                length,
                Unit.FOOT,
                new Formula("L + k × (p + B ÷ 2)", "center line of the trench"),
                inputs.toArray(Working[]::new));
    }

    private static Given length(Job job, Wall wall) {
        return Given.of(
                "L",
                "length of wall " + wall.label(),
                wall.length().feet(),
                Unit.FOOT,
                "/walls/" + job.indexOfWall(wall.label()) + "/length");
    }

    private static Worked sum(Driver driver, List<? extends Working> lengths) {
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (Working length : lengths) {
            String symbol = "F" + (inputs.size() + 1);
            inputs.add(length instanceof Worked worked ? worked.as(symbol) : Given.of(symbol, length));
            formula.append(formula.isEmpty() ? "" : " + ").append(symbol);
            sum += length.number();
        }
        return Worked.of(
                "d",
                name(driver),
                sum,
                driver.unit(),
                new Formula(formula.isEmpty() ? "0" : formula.toString(), "sum of the section"),
                inputs.toArray(Working[]::new));
    }

    private static Worked counted(Driver driver, long count, String where) {
        Given given = Given.of("x", name(driver), (double) count, driver.unit(), where);
        return Worked.of("d", name(driver), (double) count, driver.unit(), new Formula("x", "counted"), given);
    }
}
