// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;

/**
 * What the face of a wall needs before it is coated.
 *
 * @param strip what is taken off, by trade name
 * @param cracks length of cracks to be filled, empty when none
 * @param parge whether it is evened with a parge coat of mortar under another coat
 */
public record SurfaceWork(List<String> strip, String cracks, boolean parge) {

    public SurfaceWork {
        strip = List.copyOf(strip);
    }
}
