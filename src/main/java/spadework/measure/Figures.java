// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How a number is written for people. The value itself is never changed by it. */
public final class Figures {
    private Figures() {}

    /** The number to the unit's own decimals, with thousands marked, then the unit: {@code 1,306.5 cf}. */
    public static String withUnit(BigDecimal value, Unit unit) {
        if (unit == Unit.DOLLAR) {
            return (value.signum() < 0 ? "\u2212$" : "$") + Digits.grouped(value.abs(), 2);
        }
        String number = minus(Digits.grouped(value, unit.decimals()));
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /**
     * What somebody counted or agreed, with every decimal that was stated and never fewer than its unit has: it is
     * multiplied as it is printed.
     */
    public static String counted(BigDecimal value, Unit unit) {
        int stated = value.stripTrailingZeros().scale();
        if (unit == Unit.DOLLAR || stated <= unit.decimals()) {
            return withUnit(value, unit);
        }
        String number = minus(Digits.grouped(value, stated));
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** The value rounded half up to the decimals in which its unit is printed. This is what gets multiplied. */
    public static BigDecimal printed(BigDecimal value, Unit unit) {
        return value.setScale(unit.decimals(), RoundingMode.HALF_UP);
    }

    /** A number as the answer of a calculator: four figures that count, no trailing zeros, thousands marked. */
    public static String inAnswer(BigDecimal value) {
        int before = value.precision() - value.scale();
        int decimals = Math.min(8, Math.max(0, 4 - before));
        BigDecimal tidy = value.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return Digits.grouped(tidy, Math.max(0, tidy.scale()));
    }

    /** A number inside a working: at most four decimals, no trailing zeros, thousands marked. */
    public static String inWorking(BigDecimal value) {
        BigDecimal tidy = value.setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
        int decimals = Math.max(0, tidy.scale());
        return minus(Digits.grouped(tidy, decimals));
    }

    /** A true minus sign, which is as wide as a plus and never breaks from its number. */
    private static String minus(String number) {
        return number.replace('-', '\u2212');
    }
}
