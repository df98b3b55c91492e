// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/**
 * The footing under a wall.
 *
 * @param thickness top to bottom
 * @param projection how far it stands out from the wall's face
 * @param measured whether both were measured here; otherwise at least one is the usual size
 */
public record Footing(Length thickness, Length projection, boolean measured) {

    /** A footing that was measured. */
    public Footing(Length thickness, Length projection) {
        this(thickness, projection, true);
    }

    /** Whether both are as large, measured or not. */
    public boolean isAsLargeAs(Footing other) {
        return thickness.equals(other.thickness) && projection.equals(other.projection);
    }
}
