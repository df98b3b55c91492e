// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

/**
 * A strip laid out in plan, on the left of one who walks along the wall.
 *
 * @param x feet, where the wall begins in the direction of walking; so is {@code y}
 * @param turn quarter turns to the right from walking along the x axis, 0 to 3
 */
record PlacedStrip(Strip strip, double x, double y, int turn) {

    /** Direction of walking, x. */
    int alongX() {
        return turn == 0 ? 1 : turn == 2 ? -1 : 0;
    }

    int alongY() {
        return turn == 3 ? 1 : turn == 1 ? -1 : 0;
    }

    /** Direction away from the house, x. */
    int outX() {
        return -alongY();
    }

    int outY() {
        return alongX();
    }

    double endX() {
        return x + alongX() * strip.length();
    }

    double endY() {
        return y + alongY() * strip.length();
    }

    /** Distance of a place along the wall from its beginning. */
    double along(double px, double py) {
        return (px - x) * alongX() + (py - y) * alongY();
    }

    /** Distance of a place from the wall's line, positive outside. */
    double out(double px, double py) {
        return (px - x) * outX() + (py - y) * outY();
    }

    boolean spans(double along) {
        return along > 0 && along < strip.length();
    }
}
