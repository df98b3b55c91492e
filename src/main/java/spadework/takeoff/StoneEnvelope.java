package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import spadework.job.Corner;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.takeoff.wall.DugWall;
import spadework.takeoff.wall.WallMeasures;
import spadework.working.Listed;
import spadework.working.Worked;

/**
 * The stone around a footing drain: at least 6 in above the footing's top, 2 in under the pipe and 6 in over it (IRC
 * R405.1; F-04, F-05, F-06). Whichever of the two is higher governs.
 */
public final class StoneEnvelope {
    private static final String CODE = "IRC R405.1";
    private static final double SIX_INCHES = 0.5;
    /** Stone under the pipe, feet. */
    static final double BEDDING = 2.0 / 12;

    private static final int ROLL_FEET = 100;

    private StoneEnvelope() {}

    /** Height of the stone above the trench's bottom, feet. */
    static Worked height(WallMeasures m, Pipe pipe) {
        Listed outside = outside(pipe);
        return Worked.of(
                "hs",
                "height of the stone above the trench's bottom",
                Math.max(m.footing().number() + SIX_INCHES, BEDDING + outside.number() + SIX_INCHES),
                Unit.FOOT,
                "max(tf + 6 ÷ 12, 2 ÷ 12 + OD + 6 ÷ 12)",
                CODE,
                m.footing(),
                outside);
    }

    static Listed outside(Pipe pipe) {
        return Listed.of("OD", "outside diameter of the pipe", pipe.outside().feet(), Unit.FOOT, pipe.standard());
    }

    /** Volume of the stone along one wall with the corners counted with it, cubic yards. */
    static Worked volume(Job job, FootingDrain drain, WallMeasures m, Pipe pipe) {
        Worked height = height(m, pipe);
        Worked area = area(m, height, outside(pipe));
        Worked straight = Worked.of(
                "Vs",
                "stone along the wall",
                m.length().number() * area.number(),
                Unit.CUBIC_FOOT,
                "L × As",
                "length times section",
                m.length(),
                area);
        List<DugWall.CornerVolume> corners = new ArrayList<>();
        for (Corner corner : job.corners()) {
            if (corner.first().wall().equals(m.wall().label())
                    && drain.along().contains(corner.second().wall())) {
                WallMeasures second =
                        WallMeasures.of(job, job.getWall(corner.second().wall()));
                corners.add(new DugWall.CornerVolume(
                        corner.kind(), DugWall.volume("Cs" + (corners.size() + 1), height, m, second)));
            }
        }
        return DugWall.withCorners("S", "drain stone, in place", straight, corners);
    }

    /**
     * Section of the stone without the pipe in it, square feet: a trapezoid beside the footing, the strip over the
     * footing's projection, less the circle of the pipe. All in feet and not negative.
     *
     * @param width of the trench's bottom, beside the footing
     * @param height of the stone above the trench's bottom
     * @param slope of the bank, run for each rise
     * @param outside outside diameter of the pipe; 0 without one
     */
    public static double section(
            double width, double height, double slope, double projection, double footing, double outside) {
        return width * height
                + slope * height * height / 2
                + projection * Math.max(height - footing, 0)
                - Math.PI * outside * outside / 4;
    }

    private static Worked area(WallMeasures m, Worked height, Listed outside) {
        double value = section(
                m.width().number(),
                height.number(),
                m.slope().number(),
                m.projection().number(),
                m.footing().number(),
                outside.number());
        return Worked.of(
                "As",
                "section of the stone without the pipe",
                value,
                Unit.SQUARE_FOOT,
                "B × hs + s × hs^2 ÷ 2 + p × max(hs − tf, 0) − π × OD^2 ÷ 4",
                "area of a trapezoid less a circle",
                m.width(),
                height,
                m.slope(),
                m.projection(),
                m.footing(),
                outside);
    }

    /** Fabric over the top of the stone only, square yards: one of the two ways of IRC R405.1. */
    static Worked fabric(WallMeasures m, Pipe pipe) {
        Worked height = height(m, pipe);
        Worked width = Worked.of(
                "wf",
                "width of the fabric, 6 in up the wall and 6 in up the bank",
                m.projection().number() + m.width().number() + m.slope().number() * height.number() + 1,
                Unit.FOOT,
                "p + B + s × hs + 6 ÷ 12 + 6 ÷ 12",
                CODE + "; turned-up edges are common practice, no source",
                m.projection(),
                m.width(),
                m.slope(),
                height);
        double laps = WholePackages.roundUp(m.length().number() / ROLL_FEET);
        Worked lapCount = Worked.of(
                "j",
                "laps, one for each roll begun",
                laps,
                Unit.EACH,
                "ceil(L ÷ " + ROLL_FEET + ")",
                "rolls of 100 ft; common practice, no source",
                m.length());
        return Worked.of(
                "Fa",
                "fabric over the top of the stone",
                (m.length().number() + laps) * width.number() / 9,
                Unit.SQUARE_YARD,
                "(L + j × 12 ÷ 12) × wf ÷ 9",
                "12 in lap; common practice, no source",
                m.length(),
                lapCount,
                width);
    }
}
