// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Length;

/**
 * The footing under a wall.
 *
 * @param thickness top to bottom
 * @param projection how far it stands out from the wall's face
 */
public record Footing(Length thickness, Length projection) {}
