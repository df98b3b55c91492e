// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import spadework.drawing.shape.Shape;

/**
 * A solid pipe from the house to an outlet.
 *
 * @param label empty for the last few feet from a drain straight into its outlet
 * @param starts where water comes into it; it leaves the house at the first
 */
public record PlanRun(String label, Shape.Role role, List<OutlineSpot> starts, String outlet) {

    public PlanRun {
        starts = List.copyOf(starts);
    }

    OutlineSpot leaves() {
        return starts.get(0);
    }

    boolean isRoofWater() {
        return role == Shape.Role.ROOF_LINE;
    }
}
