// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.job.Side;
import spadework.place.OutlineSpot;
import spadework.place.OutlineWay;

/** The way along the outline of the house from one spot to another. */
public final class OutlinePath {
    private OutlinePath() {}

    /** The points of the shorter way, corners among them, that many points outside the house. */
    static List<Point> way(PlanFrame frame, OutlineSpot from, OutlineSpot to, double out) {
        return way(frame, OutlineWay.sides(frame.size(), from, to), from, to, out);
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

    private static Point corner(Rect rect, Side one, Side other) {
        double x = one == Side.EAST || other == Side.EAST ? rect.right() : rect.left();
        double y = one == Side.SOUTH || other == Side.SOUTH ? rect.bottom() : rect.top();
        return new Point(x, y);
    }
}
