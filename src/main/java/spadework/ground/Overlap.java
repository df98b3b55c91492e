// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;

/**
 * Ground that the strips of neighboring walls share beyond what their corner terms take away, or that the corner terms
 * take away too often.
 *
 * @param walls labels of the walls that were looked at together, in their order along the chain; none where a hole
 *     takes the ground
 * @param first label of the wall with which it is counted, or of the outlet
 * @param slices what is dug less the signed sum of strips and corners, level by level; negative where strips overlap
 */
public record Overlap(List<String> walls, String first, List<Slice> slices) {

    public Overlap {
        walls = List.copyOf(walls);
        slices = List.copyOf(slices);
    }

    /** Cubic feet to add to the signed sum; negative where strips overlap. */
    public double volume() {
        return slices.stream().mapToDouble(Slice::volume).sum();
    }
}
