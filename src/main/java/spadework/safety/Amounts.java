// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import spadework.measure.Digits;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.working.Working;

/** Figures as findings carry them. */
final class Amounts {
    private static final double NOISE = 1e-6;

    private Amounts() {}

    /** A ratio as percent: {@code 0.52%}. */
    static String slope(double ratio) {
        return Digits.fixed(ratio * 100, 2) + "%";
    }

    /** A share that is percent already, to the whole percent. */
    static String share(Working percent) {
        return Digits.fixed(percent.number(), 0) + "%";
    }

    /** A quantity in its own unit, to the decimals of that unit; small flows to one more figure. */
    static String of(Working working) {
        boolean small = working.number() > 0 && working.number() < 0.05;
        return small ? "under 0.05 " + working.unit().symbol() : Figures.withUnit(working.value(), working.unit());
    }

    /** What is still missing, in feet and inches: rounded up to half an inch, so that it is never nothing. */
    static String feetUp(double feet) {
        return feet(Math.ceil(feet * 24 - NOISE) / 24);
    }

    /** A length in feet as feet and inches. */
    static String feet(double feet) {
        return Length.ofFeet(feet).text();
    }

    /** A ratio as percent, rounded up so that what is asked for is enough. */
    static String slopeUp(double ratio) {
        return slope(Math.ceil(ratio * 10_000 - NOISE) / 10_000);
    }

    /** A level in feet, rounded down so that what is asked for is deep enough. */
    static String levelDown(double feet) {
        return level(Math.floor(feet * 100 + NOISE) / 100);
    }

    /** A level in feet, rounded up so that what is asked for is high enough. */
    static String levelUp(double feet) {
        return level(Math.ceil(feet * 100 - NOISE) / 100);
    }

    /** Inches, rounded up to a tenth. */
    static String inchesUp(double inches) {
        return Digits.fixed(Math.ceil(inches * 10 - NOISE) / 10, 1) + " in";
    }

    /** A level in feet. */
    static String level(double feet) {
        return Length.ofFeet(feet).levelText();
    }
}
