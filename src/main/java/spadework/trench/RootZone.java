// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import spadework.measure.Length;

/**
 * The root zone of a tree by its trunk. Published rules differ, so all are kept and each names its source. None is
 * a law everywhere, and the arboricultural standard names no single radius (R-05, from memory).
 */
public enum RootZone {
    VANCOUVER("R-01", 1.0, "Vancouver WA 20.170.100"),
    NORTH_CAROLINA("R-02", 1.25, "NC State Extension, Fig. 3"),
    EDINA("R-03", 1.5, "City of Edina MN tree protection");

    /** The rules with the smallest and the largest radius. */
    public static final String SOURCE = "Vancouver WA 20.170.100 (1 ft an inch); City of Edina MN (1.5 ft an inch)";

    private final String id;
    private final double feetPerInch;
    private final String source;

    RootZone(String id, double feetPerInch, String source) {
        this.id = id;
        this.feetPerInch = feetPerInch;
        this.source = source;
    }

    /** Short name of the rule, as {@code R-01}. */
    public String id() {
        return id;
    }

    /** Feet of radius for each inch of trunk. */
    public double feetPerInch() {
        return feetPerInch;
    }

    public String source() {
        return source;
    }

    /** The radius from the trunk's middle; the trunk's diameter is measured 4.5 ft above the ground. */
    public Length radius(Length trunk) {
        return Length.ofFeet(trunk.inches() * feetPerInch);
    }

    /** The trunk whose zone has that radius. */
    public Length trunk(Length radius) {
        return Length.ofInches(radius.feet() / feetPerInch);
    }

    /** The diameter of a trunk from its girth: circumference ÷ π. */
    public static Length diameter(Length girth) {
        return Length.ofFeet(girth.feet() / Math.PI);
    }

    /** The smallest published radius. */
    public static Length least(Length trunk) {
        return VANCOUVER.radius(trunk);
    }

    /** The largest published radius. */
    public static Length most(Length trunk) {
        return EDINA.radius(trunk);
    }
}
