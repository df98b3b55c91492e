// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.measure.Length;

/**
 * Where a bank may be cut in steps: in cohesive soil of Type A and B, none of them over 4 ft high, each but the first
 * behind the slope of the soil (29 CFR 1926 Subpart P App. B, figure B-1.2, T-27; OSHA Technical Manual V:2, T-28;
 * both from memory). It is no all-clear: the competent person decides on site.
 */
public final class Benching {
    /** The highest step in soil of Type B; soil beside a foundation is never better. */
    public static final Length RISE = Length.ofFeet(4);

    /** Where the rule stands. */
    public static final String SOURCE = "29 CFR 1926 Subpart P App. B figure B-1.2 (from memory)";

    /** Soil that holds together; granular soil and fill do not stand in steps. */
    private static final Set<Texture> COHESIVE = EnumSet.of(
            Texture.CLAY, Texture.SILTY_CLAY, Texture.SILTY_CLAY_LOAM, Texture.CLAY_LOAM, Texture.SANDY_CLAY_LOAM);

    private Benching() {}

    /** What stands against steps in a soil. */
    public enum Against {
        /** It is of Type C, or nobody classed it. */
        TYPE,
        /** It does not hold together, or nobody tried it by hand. */
        TEXTURE,
        /** Water seeps from it freely, which makes it Type C (App. A (b), T-05), or nobody looked. */
        WATER
    }

    /** What stands against steps beside a foundation; empty where nothing that the job states does. */
    public static Optional<Against> against(Soil soil) {
        if (Bank.soil(soil.type()) != SoilType.B) {
            return Optional.of(Against.TYPE);
        }
        if (!COHESIVE.contains(soil.texture())) {
            return Optional.of(Against.TEXTURE);
        }
        boolean seeps = soil.seepage() == Seepage.FREE || soil.seepage() == Seepage.UNKNOWN;
        return seeps ? Optional.of(Against.WATER) : Optional.empty();
    }
}
