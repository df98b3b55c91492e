// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.List;

/** One thing on a drawing. Coordinates are points from the top left corner; y grows downward. */
public sealed interface Shape {

    /** How heavy a line is drawn. */
    enum Weight {
        THIN,
        MEDIUM,
        THICK
    }

    /** What a line or area stands for; the press decides how that looks. */
    enum Role {
        HOUSE,
        WALL,
        DRAIN,
        MAIN,
        ROOF_LINE,
        DIMENSION,
        LIMIT,
        GROUND,
        WATER,
        SOIL,
        STONE,
        FABRIC,
        COATING,
        SHIELD,
        DUG,
        EXTRA_DUG,
        UNMEASURED,
        EXTRA_WALL,
        EXTRA_PIPE,
        BREAK,
        PLAIN
    }

    /** A straight line. */
    record Line(double x1, double y1, double x2, double y2, Weight weight, Role role, boolean arrow) implements Shape {}

    /** A rectangle. */
    record Box(double x, double y, double width, double height, Weight weight, Role role) implements Shape {}

    /** A closed outline with a light fill, as a wall that is cut through; at least three corners. */
    record Area(List<Point> corners, Weight weight, Role role) implements Shape {
        public Area {
            corners = List.copyOf(corners);
        }
    }

    /** A circle. */
    record Dot(double x, double y, double radius, Weight weight, Role role, boolean filled) implements Shape {}

    /** Words, horizontal; {@code anchor} is start, middle or end. */
    record Label(double x, double y, String text, String anchor, double size, boolean bold, Role role)
            implements Shape {}
}
