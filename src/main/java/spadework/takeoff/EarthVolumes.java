// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

/** The three volumes of the same soil: bank, as it lies; loose, as it is hauled; compacted, as it is filled. */
public final class EarthVolumes {
    private EarthVolumes() {}

    /** Loose from bank: bank × (1 + swell) (E-08). Any one volume unit. */
    public static double loose(double bank, double swell) {
        return bank * (1 + swell);
    }

    /** Bank from loose: loose ÷ (1 + swell) (E-08). */
    public static double bankOf(double loose, double swell) {
        return loose / (1 + swell);
    }

    /** Compacted from bank: bank × (1 − shrink) (E-08). */
    public static double compacted(double bank, double shrink) {
        return bank * (1 - shrink);
    }

    /** Bank that a compacted fill takes: fill ÷ (1 − shrink). */
    public static double bankFor(double fill, double shrink) {
        return fill / (1 - shrink);
    }

    /** Shrink from the two volumes of the same soil: 1 − compacted ÷ bank (E-08). */
    public static double shrink(double bank, double compacted) {
        return 1 - compacted / bank;
    }

    /**
     * Swell from the weights of one volume, bank ÷ loose − 1 (E-08). From the volumes of one soil it is loose ÷ bank
     * − 1: hand the loose volume over first.
     */
    public static double swell(double bankWeight, double looseWeight) {
        return bankWeight / looseWeight - 1;
    }

    /** Whole truck loads for a loose volume; both in the same unit. */
    public static double loads(double loose, double truck) {
        return WholePackages.roundUp(loose / truck);
    }

    /** Tons from a volume in place: cy × tons a cubic yard. */
    public static double tons(double cubicYards, double tonsPerCubicYard) {
        return cubicYards * tonsPerCubicYard;
    }

    /** Cubic yards in place that so many tons fill: tons ÷ tons a cubic yard. */
    public static double cubicYards(double tons, double tonsPerCubicYard) {
        return tons / tonsPerCubicYard;
    }
}
