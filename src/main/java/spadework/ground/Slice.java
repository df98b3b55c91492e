// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

/**
 * A level slice of ground. Between its faces the area is at most a quadratic in the height, so the rule of Gauss with
 * two places gives its volume without error.
 *
 * @param from feet over the trench's bottom; so is {@code to}
 * @param low square feet at the lower place, a share of (1 − 1 ÷ √3) ÷ 2 up the slice
 * @param high square feet at the upper place, as far from the top
 */
public record Slice(double from, double to, double low, double high) {
    /** Of a slice's thickness, from its face to the nearer place. */
    static final double PLACE = (1 - 1 / Math.sqrt(3)) / 2;

    /** Cubic feet. */
    public double volume() {
        return (to - from) / 2 * (low + high);
    }
}
