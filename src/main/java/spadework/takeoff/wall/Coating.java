// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

/** How far a gallon goes. */
public final class Coating {
    /** 231 cu in in a US gallon ÷ 144 sq in ÷ 0.001 in: one gallon, one mil thick, covers 1604.17 sf (C-01). */
    public static final double SQUARE_FEET_PER_GALLON_MIL = 231.0 / 144 / 0.001;

    private Coating() {}

    /**
     * Square feet that a gallon covers at a wet film (C-01); the same formula gives the wet film of a coverage.
     *
     * @param wetMils above 0
     */
    public static double coverage(double wetMils) {
        return SQUARE_FEET_PER_GALLON_MIL / wetMils;
    }

    /**
     * Wet film for a dry one: dry ÷ solids by volume (UFC 3-190-06 s. 2.1.5, C-02). Any one thickness unit.
     *
     * @param volumeSolids above 0, at most 1
     */
    public static double wetFilm(double dryFilm, double volumeSolids) {
        return dryFilm / volumeSolids;
    }

    /** Dry film that a wet one leaves: wet × solids by volume (UFC 3-190-06 s. 2.1.5, C-02). */
    public static double dryFilm(double wetFilm, double volumeSolids) {
        return wetFilm * volumeSolids;
    }

    /** US gallons for an area at a wet film: sf × wet mils ÷ 1604.17. */
    public static double gallons(double squareFeet, double wetMils) {
        return squareFeet / coverage(wetMils);
    }

    /**
     * Mean wet film in mils that gallons make on an area: gallons × 1604.17 ÷ sf.
     *
     * @param squareFeet above 0
     */
    public static double wetFilmOf(double gallons, double squareFeet) {
        return gallons * SQUARE_FEET_PER_GALLON_MIL / squareFeet;
    }
}
