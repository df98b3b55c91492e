// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.util.List;
import java.util.Map;

/**
 * Photos that were taken while the work went on.
 *
 * @param changes the evidence of each change order, by its number
 * @param holdPoints what was looked at before it was covered
 */
public record WorkPictures(Map<Integer, List<Picture>> changes, List<Picture> holdPoints) {
    /** No photo. */
    public static final WorkPictures NONE = new WorkPictures(Map.of(), List.of());

    public WorkPictures {
        changes = Map.copyOf(changes);
        holdPoints = List.copyOf(holdPoints);
    }

    public List<Picture> ofChange(int number) {
        return changes.getOrDefault(number, List.of());
    }
}
