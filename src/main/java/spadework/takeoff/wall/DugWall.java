package spadework.takeoff.wall;

import java.util.ArrayList;
import java.util.List;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** The soil that is dug at one wall, with the corners that are counted with it. */
public final class DugWall {
    private DugWall() {}

    /** Bank volume in cubic yards. */
    public static Worked bank(Job job, Wall wall) {
        WallMeasures m = WallMeasures.of(job, wall);
        Worked start = m.section("A0", "at the start", m.start());
        Worked middle = m.middleSection();
        Worked end = m.section("A1", "at the end", m.end());
        Worked straight = Worked.of(
                "V",
                "straight trench",
                TrenchGeometry.prismoid(m.length().number(), start.number(), middle.number(), end.number()),
                Unit.CUBIC_FOOT,
                "L ÷ 6 × (A0 + 4 × Am + A1)",
                "prismoidal rule, exact for a straight grade",
                m.length(),
                start,
                middle,
                end);
        return withCorners("D", "soil dug, bank", straight, corners(job, wall));
    }

    /** A volume and the corners that add to it or take from it, as cubic yards. */
    public static Worked withCorners(String symbol, String name, Worked straight, List<CornerVolume> corners) {
        StringBuilder formula = new StringBuilder(straight.symbol());
        List<Working> inputs = new ArrayList<>(List.of(straight));
        double sum = straight.number();
        for (CornerVolume corner : corners) {
            boolean adds = corner.kind() == CornerKind.OUTSIDE;
            formula.append(adds ? " + " : " − ").append(corner.volume().symbol());
            inputs.add(corner.volume());
            sum += adds ? corner.volume().number() : -corner.volume().number();
        }
        String whole = corners.isEmpty() ? formula + " ÷ 27" : "(" + formula + ") ÷ 27";
        return Worked.of(
                symbol,
                name,
                sum / 27,
                Unit.CUBIC_YARD,
                whole,
                "27 cf in a cubic yard",
                inputs.toArray(Working[]::new));
    }

    /** A corner's volume and whether it adds or takes away. */
    public record CornerVolume(CornerKind kind, Worked volume) {}

    private static List<CornerVolume> corners(Job job, Wall wall) {
        List<CornerVolume> volumes = new ArrayList<>();
        for (Corner corner : job.corners()) {
            if (corner.first().wall().equals(wall.label())) {
                WallMeasures first = WallMeasures.of(job, wall);
                WallMeasures second =
                        WallMeasures.of(job, job.getWall(corner.second().wall()));
                double depth = Math.max(
                        first.depthAt(corner.first().atEnd()).number(),
                        second.depthAt(corner.second().atEnd()).number());
                Given height = Given.of(
                        "Hc",
                        "depth of the trench at the corner, the deeper of the two",
                        depth + first.footing().number(),
                        Unit.FOOT,
                        "/corners/" + job.corners().indexOf(corner));
                volumes.add(new CornerVolume(corner.kind(), volume("C" + (volumes.size() + 1), height, first, second)));
            }
        }
        return volumes;
    }

    /** The corner up to a height above the trench's bottom, cubic feet. */
    public static Worked volume(String symbol, Working height, WallMeasures first, WallMeasures second) {
        double value = TrenchGeometry.corner(
                height.number(), first.footing().number(), first.cornerSide(), second.cornerSide());
        String h = height.symbol();
        return Worked.of(
                symbol,
                "corner with wall " + second.wall().label(),
                value,
                Unit.CUBIC_FOOT,
                "(p1 + B1) × (p2 + B2) × " + h + " + ((p1 + B1) × s2 + (p2 + B2) × s1) × " + h + "^2 ÷ 2 + s1 × s2 × "
                        + h + "^3 ÷ 3 − p1 × p2 × min(tf, " + h + ")",
                "integral of the rectangle between two banks over the height",
                height,
                first.footing(),
                renamed("p1", first.projection()),
                renamed("B1", first.width()),
                renamed("s1", first.slope()),
                renamed("p2", second.projection()),
                renamed("B2", second.width()),
                renamed("s2", second.slope()));
    }

    private static Given renamed(String symbol, Working working) {
        return new Given(symbol, working.name(), working.value(), working.unit(), working.source());
    }
}
