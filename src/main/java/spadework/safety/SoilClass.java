// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.List;
import spadework.finding.Finding;
import spadework.job.SoilType;

/** What follows from the soil type that somebody names beside a foundation (T-02, T-04, T-08, T-11). */
public final class SoilClass {
    static final String SOURCE = "29 CFR 1926 Subpart P App. A";

    private SoilClass() {}

    /** A stop for the types that the soil beside a foundation cannot be; it was dug before. */
    public static List<Finding> beside(SoilType type) {
        if (type == SoilType.A) {
            return List.of(stop("soil-type-a", "", SOURCE + " (b), Type A (iii)"));
        }
        if (type == SoilType.STABLE_ROCK) {
            return List.of(stop("soil-rock-beside-footing", "", SOURCE + " (b)"));
        }
        return List.of();
    }

    /** Who has to class the soil, or to confirm its class. */
    public static Finding confirm(SoilType type) {
        return type == SoilType.NOT_CLASSED
                ? must("soil-not-classed", "", SOURCE + "; 29 CFR 1926.652(b)(1)")
                : must("soil-class-confirm", "", SOURCE, "type", type.name());
    }

    /** Where a slope was named instead of a soil. */
    public static Finding unnamed() {
        return must("soil-not-named", "", SOURCE + "; 29 CFR 1926.652(b)(1)");
    }

    /** Where nobody looked for water in the soil. */
    public static Finding seepageUnknown() {
        return must("seepage-unknown", "", SOURCE);
    }
}
