// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

/** A place on the sheet, in points from the top left corner; y grows downward. */
public record Point(double x, double y) {

    public double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The point that lies that share of the way to another. */
    public Point toward(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
