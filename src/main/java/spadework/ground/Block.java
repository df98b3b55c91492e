// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

/** A level rectangle in plan; feet, in the chain's layout. */
record Block(double x0, double y0, double x1, double y1) {

    /** From a corner, so far along one direction and so far along another at right angles to it. */
    static Block from(double x, double y, double toX, double toY) {
        return new Block(Math.min(x, toX), Math.min(y, toY), Math.max(x, toX), Math.max(y, toY));
    }

    /** In front of a wall from one station to another, from a distance off its line to another. */
    static Block before(PlacedStrip wall, double from, double to, double near, double far) {
        return from(
                wall.x() + wall.alongX() * from + wall.outX() * near,
                wall.y() + wall.alongY() * from + wall.outY() * near,
                wall.x() + wall.alongX() * to + wall.outX() * far,
                wall.y() + wall.alongY() * to + wall.outY() * far);
    }

    boolean holds(double x, double y) {
        return x > x0 && x < x1 && y > y0 && y < y1;
    }

    boolean meets(Block other) {
        return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
    }

    boolean isEmpty() {
        return !(x1 > x0 && y1 > y0);
    }
}
