package spadework.takeoff;

/** How far a gallon goes. */
public final class Coating {
    /** 231 cu in in a US gallon ÷ 144 sq in ÷ 0.001 in: one gallon, one mil thick, covers 1604.17 sf (C-01). */
    public static final double SQUARE_FEET_PER_GALLON_MIL = 231.0 / 144 / 0.001;

    private Coating() {}

    /** Square feet that a gallon covers at a wet film, in mils. */
    public static double coverage(double wetMils) {
        return SQUARE_FEET_PER_GALLON_MIL / wetMils;
    }

    /** Wet film for a dry one: dry ÷ solids by volume (UFC 3-190-06 s. 2.1.5, C-02). Any one thickness unit. */
    public static double wetFilm(double dryFilm, double volumeSolids) {
        return dryFilm / volumeSolids;
    }

    /** US gallons for an area at a wet film: sf × wet mils ÷ 1604.17. */
    public static double gallons(double squareFeet, double wetMils) {
        return squareFeet / coverage(wetMils);
    }
}
