package spadework.drawing;

import java.util.List;

/**
 * A solid pipe from the house to an outlet.
 *
 * @param label empty for the last few feet from a drain straight into its outlet
 * @param starts where water comes into it; it leaves the house at the first
 */
record Run(String label, Shape.Role role, List<Spot> starts, String outlet) {

    Run {
        starts = List.copyOf(starts);
    }

    Spot leaves() {
        return starts.get(0);
    }

    boolean isRoofWater() {
        return role == Shape.Role.ROOF_LINE;
    }
}
