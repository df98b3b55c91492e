// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.job.House;
import spadework.job.Side;

/** The way along the outline of the house from one spot to another. */
public final class OutlinePath {
    private static final int SIDES = Side.values().length;

    private OutlinePath() {}

    /** The points of the shorter way, corners among them, that many points outside the house. */
    static List<Point> way(PlanFrame frame, OutlineSpot from, OutlineSpot to, double out) {
        return way(frame, sides(frame.size(), from, to), from, to, out);
    }

    /** The points of the way that passes those sides. */
    static List<Point> way(PlanFrame frame, List<Side> sides, OutlineSpot from, OutlineSpot to, double out) {
        List<Point> points = new ArrayList<>();
        points.add(frame.at(from, out));
        for (int i = 1; i < sides.size(); i++) {
            points.add(corner(frame.house().grown(out), sides.get(i - 1), sides.get(i)));
        }
        points.add(frame.at(to, out));
        return points;
    }

    /** The sides of the house that the shorter way passes, both ends' among them. */
    static List<Side> sides(House house, OutlineSpot from, OutlineSpot to) {
        int clockwise = Math.floorMod(to.side().ordinal() - from.side().ordinal(), SIDES);
        boolean forward = clockwise == 1 || (clockwise == 2 && isShorterClockwise(house, from, to));
        int steps = forward ? clockwise : (SIDES - clockwise) % SIDES;
        List<Side> sides = new ArrayList<>();
        for (int step = 0; step <= steps; step++) {
            sides.add(Side.values()[Math.floorMod(from.side().ordinal() + (forward ? step : -step), SIDES)]);
        }
        return sides;
    }

    /** Feet along the outline by the shorter way. */
    static double feet(House house, OutlineSpot from, OutlineSpot to) {
        double ahead = clockwise(house, from, to);
        return Math.min(ahead, around(house) - ahead);
    }

    private static boolean isShorterClockwise(House house, OutlineSpot from, OutlineSpot to) {
        return clockwise(house, from, to) <= around(house) / 2;
    }

    private static double clockwise(House house, OutlineSpot from, OutlineSpot to) {
        double ahead = to.clockwise(house) - from.clockwise(house);
        return (ahead % around(house) + around(house)) % around(house);
    }

    private static double around(House house) {
        return 2 * (house.eastWest().feet() + house.northSouth().feet());
    }

    private static Point corner(Rect rect, Side one, Side other) {
        double x = one == Side.EAST || other == Side.EAST ? rect.right() : rect.left();
        double y = one == Side.SOUTH || other == Side.SOUTH ? rect.bottom() : rect.top();
        return new Point(x, y);
    }
}
