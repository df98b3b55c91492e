// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Hatching;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Job;

/**
 * All ground that a job digs, as it lies open at grade: one outline for bodies that run into one another. The bodies
 * are those that soil, price and findings are made of.
 *
 * @param agreed what is dug in any case
 * @param apart what is dug besides for parts that are drawn apart
 * @param unplaced what is dug nobody wrote down where
 */
record DugGround(Area agreed, Area apart, List<DigBody> unplaced) {
    private static final double SHORTEST_EDGE = 0.05;

    static DugGround of(
            Job job, PipeLayout water, AddedParts extra, Map<String, Point> outlets, PlanFrame frame, PlanBands bands) {
        DugShapes shapes = new DugShapes(job, water, outlets, frame, bands);
        Area agreed = new Area();
        Area apart = new Area();
        Area indoors = new Area();
        List<DigBody> unplaced = new ArrayList<>();
        for (DigBody body : DigBodies.of(job)) {
            Area ground = shapes.isIndoors(body) ? indoors : isApart(job, body, extra) ? apart : agreed;
            shapes.of(body).ifPresentOrElse(ground::add, () -> unplaced.add(body));
        }
        Rect house = frame.house();
        Area inside = rectangle(house);
        Area sheet = rectangle(frame.sheet().grown(-2));
        agreed.intersect(sheet);
        apart.intersect(sheet);
        agreed.subtract(inside);
        agreed.add(indoors);
        apart.subtract(inside);
        apart.subtract(agreed);
        return new DugGround(agreed, apart, List.copyOf(unplaced));
    }

    private static Area rectangle(Rect rect) {
        return new Area(new Rectangle2D.Double(rect.left(), rect.top(), rect.width(), rect.height()));
    }

    /** A sump and its pipe are drawn apart where all that runs into it is. */
    private static boolean isApart(Job job, DigBody body, AddedParts extra) {
        if (body.kind() != BodyKind.SUMP_PIT && body.kind() != BodyKind.DISCHARGE) {
            return extra.has(body.label());
        }
        List<String> feeders = new ArrayList<>();
        job.water().drains().stream()
                .filter(drain -> drain.into().equals(body.label()))
                .forEach(drain -> feeders.add(drain.label()));
        job.water().mains().stream()
                .filter(main -> main.into().equals(body.label()))
                .forEach(main -> feeders.add(main.label()));
        return !feeders.isEmpty() && feeders.stream().allMatch(extra::has);
    }

    void outline(DrawingSheet sheet) {
        edges(agreed, Role.DUG).forEach(sheet::draw);
        edges(apart, Role.EXTRA_DUG).forEach(sheet::draw);
    }

    /** Light lines under everything, clear of all words. */
    void hatch(DrawingSheet sheet) {
        sheet.under(Hatching.within(edges(agreed, Role.DUG), Role.DUG, sheet.shapes()));
    }

    private static List<Line> edges(Area area, Role role) {
        List<Line> edges = new ArrayList<>();
        double[] at = new double[6];
        Point first = new Point(0, 0);
        Point last = first;
        for (PathIterator path = area.getPathIterator(null); !path.isDone(); path.next()) {
            int kind = path.currentSegment(at);
            Point next = kind == PathIterator.SEG_CLOSE ? first : new Point(at[0], at[1]);
            if (kind == PathIterator.SEG_MOVETO) {
                first = next;
            } else if (last.distanceTo(next) > SHORTEST_EDGE) {
                edges.add(new Line(last.x(), last.y(), next.x(), next.y(), Weight.THIN, role, false));
            }
            last = next;
        }
        return edges;
    }
}
