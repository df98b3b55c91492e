// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.Shape;
import spadework.measure.Length;
import spadework.place.OutlineSpot;

/**
 * A solid pipe from the house to an outlet.
 *
 * @param label empty for the last few feet from a drain straight into its outlet
 * @param length as it was measured, of one without a label its outlet's distance from the house; empty where nobody
 *     measured
 * @param starts where water comes into it; it leaves the house at the first
 * @param listed the start that the job names first: its outlet is placed by it, so that what an option or a change
 *     leads into it moves no outlet on the plan
 */
public record PlanRun(
        String label,
        Shape.Role role,
        Optional<Length> length,
        List<OutlineSpot> starts,
        OutlineSpot listed,
        String outlet) {

    public PlanRun {
        starts = List.copyOf(starts);
    }

    OutlineSpot leaves() {
        return starts.get(0);
    }

    /** Its label, if it has one, and its length. */
    String text() {
        return (label + " " + length.map(Length::text).orElse("")).strip();
    }

    boolean isRoofWater() {
        return role == Shape.Role.ROOF_LINE;
    }
}
