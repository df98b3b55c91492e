package spadework.trench;

import spadework.measure.Length;

/**
 * How far the roots of a tree that matter reach, by the thickness of its trunk at 4.5 ft. Published rules differ, so both
 * ends are kept. ANSI A300 gives no single radius and leaves it to an arborist (R-05, from memory).
 */
public final class RootZone {

    /** Which rules were used. */
    public static final String SOURCE = "Vancouver WA 20.170.100 (1 ft an inch); City of Edina MN (1.5 ft an inch)";

    /** Feet of radius for each inch of trunk, Vancouver WA 20.170.100. */
    private static final double LEAST = 1.0;

    /** Feet of radius for each inch of trunk, Edina MN. */
    private static final double MOST = 1.5;

    private RootZone() {}

    /** The smaller published radius. */
    public static Length least(Length trunk) {
        return Length.ofFeet(trunk.inches() * LEAST);
    }

    /** The larger published radius. */
    public static Length most(Length trunk) {
        return Length.ofFeet(trunk.inches() * MOST);
    }
}
