// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** The measures of a section, outside the figure, each between two short strokes. */
public final class SectionMeasures {
    private static final double STROKE = 2.5;
    private static final double DEPTH_FROM_HOUSE = 30;
    private static final double BETWEEN_DEPTHS = 58;
    private static final double OVER_GRADE = 11;
    private static final double UNDER_FOOT = 11;

    private SectionMeasures() {}

    static void draw(SectionFrame frame, SectionWords words, DrawingSheet sheet) {
        depths(frame, sheet);
        double reach = frame.section().reach().feet();
        double y = frame.grade() - OVER_GRADE;
        across(
                new Point(frame.at(0, 0).x() + 4, y),
                new Point(frame.at(reach, 0).x(), y),
                frame.grade(),
                frame.section().reach().text(),
                -8,
                sheet);
        double spoil = reach + SectionFrame.SPOIL_BACK_FEET;
        across(
                new Point(frame.at(reach, 0).x(), y),
                new Point(frame.at(spoil, 0).x(), y),
                frame.grade(),
                words.spoilBack(),
                -8,
                sheet);
        across(
                new Point(frame.at(frame.projection(), 0).x(), frame.foot() + UNDER_FOOT),
                new Point(frame.at(frame.toe(), 0).x(), frame.foot() + UNDER_FOOT),
                frame.foot(),
                frame.section().bottomWidth().text(),
                8,
                sheet);
    }

    private static void depths(SectionFrame frame, DrawingSheet sheet) {
        double house = frame.at(-SectionFrame.WALL_FEET - frame.projection(), 0).x();
        double inner = house - DEPTH_FROM_HOUSE;
        double outer = inner - BETWEEN_DEPTHS;
        double top = frame.at(0, frame.top()).y();
        double wall = frame.at(-SectionFrame.WALL_FEET, 0).x();
        thin(new Point(outer - STROKE, frame.grade()), new Point(wall, frame.grade()), sheet);
        thin(new Point(inner - STROKE, top), new Point(house, top), sheet);
        thin(new Point(outer - STROKE, frame.foot()), new Point(house, frame.foot()), sheet);
        down(inner, frame.grade(), top, frame.section().depth().text(), sheet);
        down(outer, frame.grade(), frame.foot(), frame.section().trenchDepth().text(), sheet);
    }

    /** An upright measure with its words to the left. */
    static void down(double x, double from, double to, String text, DrawingSheet sheet) {
        thin(new Point(x, from), new Point(x, to), sheet);
        for (double y : new double[] {from, to}) {
            thin(new Point(x - STROKE, y + STROKE), new Point(x + STROKE, y - STROKE), sheet);
        }
        double half = LabelText.width(text, LabelRequest.SMALL) / 2;
        Point middle = new Point(x, (from + to) / 2);
        want(text, middle.plus(-half - 5, 0), middle, sheet);
    }

    static void across(Point from, Point to, double edge, String text, double off, DrawingSheet sheet) {
        thin(from, to, sheet);
        double y = from.y();
        double out = Math.signum(y - edge);
        for (double x : new double[] {from.x(), to.x()}) {
            thin(new Point(x - STROKE, y + STROKE), new Point(x + STROKE, y - STROKE), sheet);
            thin(new Point(x, edge + out * 3), new Point(x, y + out * STROKE), sheet);
        }
        Point middle = from.toward(to, 0.5);
        want(text, middle.plus(0, off), middle, sheet);
    }

    /** The words at their place, or else near it with a line to their measure. */
    private static void want(String text, Point target, Point measure, DrawingSheet sheet) {
        Rect zone = new Rect(3, 20, SectionFrame.WIDTH - 3, Double.MAX_VALUE);
        LabelRequest wish = new LabelRequest(
                text,
                LabelRequest.SMALL,
                false,
                Role.DIMENSION,
                "middle",
                new LabelSpot(target, zone, 12),
                Optional.empty(),
                "",
                false);
        sheet.wish(List.of(wish, wish.withLeader(measure, zone, 110)));
    }

    private static void thin(Point a, Point b, DrawingSheet sheet) {
        sheet.line(a, b, Weight.THIN, Role.DIMENSION, false);
    }
}
