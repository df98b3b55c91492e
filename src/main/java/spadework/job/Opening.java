// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/**
 * Wall face that gets no coating: a window, a door, a pipe sleeve.
 *
 * @param height the part of its height that lies below finished grade
 */
public record Opening(String what, int count, Length width, Length height) {

    /** Area of all of them together, square feet. */
    public double squareFeet() {
        return count * width.feet() * height.feet();
    }
}
