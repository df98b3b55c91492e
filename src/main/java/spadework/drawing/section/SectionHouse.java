// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Area;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.measure.Length;

/**
 * The house in a section: wall, footing, the floor inside and what covers the wall. What has only its usual size has a
 * dotted outline, with a solid line over each edge that was measured.
 */
public final class SectionHouse {
    private static final double WALL_OVER_GRADE = 34;
    private static final double BREAK = 3;
    private static final double FLOOR = 22;
    private static final double SLAB_FEET = 4.0 / 12;

    /** The cover laps 4 in over the cove onto the footing, as it is measured. */
    private static final double LAP_FEET = 4.0 / 12;

    /** Half of the thick line, so that it lies against the wall and not in it. */
    private static final double HALF_COVER = 1.8;

    private SectionHouse() {}

    static void draw(SectionFrame frame, DrawingSheet sheet) {
        wall(frame, sheet);
        floor(frame).ifPresent(down -> slab(frame, down, sheet));
        cover(frame, sheet);
    }

    private static void wall(SectionFrame frame, DrawingSheet sheet) {
        double out = frame.projection();
        double in = -SectionFrame.WALL_FEET;
        double head = frame.grade() - WALL_OVER_GRADE;
        Point foot = frame.at(0, frame.top());
        Point back = frame.at(in, frame.top());
        // The upper edge is broken: the wall goes on.
        sheet.draw(new Area(
                List.of(
                        new Point(foot.x(), head - BREAK),
                        foot,
                        back,
                        new Point(back.x(), head + BREAK),
                        new Point((foot.x() * 2 + back.x()) / 3, head + BREAK),
                        new Point((foot.x() + back.x() * 2) / 3, head - BREAK)),
                Weight.MEDIUM,
                Role.UNMEASURED));
        sheet.line(new Point(foot.x(), head - BREAK), foot, Weight.MEDIUM, Role.WALL, false);
        sheet.draw(new Area(
                List.of(
                        frame.at(in - out, frame.top()),
                        frame.at(out, frame.top()),
                        frame.at(out, frame.bottom()),
                        frame.at(in - out, frame.bottom())),
                Weight.MEDIUM,
                Role.UNMEASURED));
        if (frame.section().footing().measured()) {
            List<Point> measured = List.of(
                    frame.at(0, frame.top()),
                    frame.at(out, frame.top()),
                    frame.at(out, frame.bottom()),
                    frame.at(0, frame.bottom()));
            for (int i = 1; i < measured.size(); i++) {
                sheet.line(measured.get(i - 1), measured.get(i), Weight.MEDIUM, Role.WALL, false);
            }
        }
    }

    /** How deep the floor lies under grade, feet; empty when its level is not known or lies off the drawing. */
    static Optional<Double> floor(SectionFrame frame) {
        return frame.section()
                .floor()
                .map(Length::feet)
                .map(over -> frame.bottom() - over)
                .filter(down -> down > 0 && down < frame.bottom());
    }

    /** Where the floor ends at the left. */
    static Point floorEnd(SectionFrame frame, double down) {
        return frame.at(-SectionFrame.WALL_FEET - frame.projection(), down).plus(-FLOOR, 0);
    }

    private static void slab(SectionFrame frame, double down, DrawingSheet sheet) {
        for (double under : new double[] {0, SLAB_FEET}) {
            boolean besideWall = down + under < frame.top();
            double from = -SectionFrame.WALL_FEET - (besideWall ? 0 : frame.projection());
            Role role = under == 0 ? Role.HOUSE : Role.UNMEASURED;
            sheet.line(frame.at(from, down + under), floorEnd(frame, down + under), Weight.MEDIUM, role, false);
        }
    }

    private static void cover(SectionFrame frame, DrawingSheet sheet) {
        Point grade = frame.at(0, 0).plus(HALF_COVER, 0);
        Point foot = frame.at(0, frame.top()).plus(HALF_COVER, 0);
        sheet.line(grade, foot, Weight.THICK, Role.COATING, false);
        double lap = Math.min(LAP_FEET, frame.projection());
        Point end = frame.at(lap, frame.top()).plus(0, -HALF_COVER);
        sheet.line(foot.plus(-HALF_COVER, -HALF_COVER), end, Weight.THICK, Role.COATING, false);
    }

    /** The middle of the cover, for a line to it. */
    static Point coverAt(SectionFrame frame, double down) {
        return frame.at(0, down).plus(2 * HALF_COVER, 0);
    }
}
