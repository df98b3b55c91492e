// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

/** An upright rectangle on the sheet, in points. */
public record Rect(double left, double top, double right, double bottom) {

    public static Rect around(Point center, double width, double height) {
        return new Rect(
                center.x() - width / 2, center.y() - height / 2, center.x() + width / 2, center.y() + height / 2);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    Point center() {
        return new Point((left + right) / 2, (top + bottom) / 2);
    }

    public Rect grown(double by) {
        return new Rect(left - by, top - by, right + by, bottom + by);
    }

    /** What both have in common; turned inside out where that is nothing. */
    Rect within(Rect other) {
        return new Rect(
                Math.max(left, other.left),
                Math.max(top, other.top),
                Math.min(right, other.right),
                Math.min(bottom, other.bottom));
    }

    public boolean overlaps(Rect other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** True if both have a point in common, be it on their edges. */
    boolean meets(Rect other) {
        return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
    }

    boolean isInside(Rect outer) {
        return left >= outer.left && right <= outer.right && top >= outer.top && bottom <= outer.bottom;
    }

    /** The point of the rectangle that is nearest to another point. */
    public Point nearestTo(Point other) {
        return new Point(Math.min(Math.max(other.x(), left), right), Math.min(Math.max(other.y(), top), bottom));
    }

    /** True if any part of the straight line from a to b lies in the rectangle: the line is clipped edge by edge. */
    boolean isCrossedBy(Point a, Point b) {
        double enter = 0;
        double leave = 1;
        for (int edge = 0; edge < 4; edge++) {
            boolean across = edge < 2;
            double run = across ? b.x() - a.x() : b.y() - a.y();
            double toLow = across ? a.x() - left : a.y() - top;
            double toHigh = across ? right - a.x() : bottom - a.y();
            double toward = edge % 2 == 0 ? -run : run;
            double room = edge % 2 == 0 ? toLow : toHigh;
            if (toward == 0 && room < 0) {
                return false;
            }
            if (toward < 0) {
                enter = Math.max(enter, room / toward);
            } else if (toward > 0) {
                leave = Math.min(leave, room / toward);
            }
        }
        return enter <= leave;
    }
}
