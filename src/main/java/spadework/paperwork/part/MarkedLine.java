// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.List;

/**
 * A marked line as crews meet it.
 *
 * @param wall label of the wall from which it was measured
 * @param distance from that wall
 * @param note what it is; empty where nobody wrote it
 * @param near labels of the trenches, beside that wall's own, that come near it
 */
public record MarkedLine(String wall, String distance, String note, List<String> near) {

    public MarkedLine {
        near = List.copyOf(near);
    }
}
