// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.math.BigDecimal;
import java.util.List;
import spadework.measure.Figures;
import spadework.measure.Unit;

/** A number together with where it came from. There are three kinds: given by the job, listed in a book, worked out. */
public sealed interface Working permits Given, Listed, Worked {

    /** The letter or short word that stands for the number in formulas, as {@code dt0}. */
    String symbol();

    /** What the number is, in words. */
    String name();

    /** The value as it is kept. */
    Amount amount();

    /** The value, unrounded. */
    default BigDecimal value() {
        return amount().exact();
    }

    Unit unit();

    /** Where it comes from: a JSON pointer, a dated book, or the published source of the formula. */
    String source();

    /** The numbers it was worked out from; none for a given or listed one. */
    default List<Working> inputs() {
        return List.of();
    }

    /** The value as a floating-point number, for engineering arithmetic. */
    default double number() {
        return amount().number();
    }

    /** The value with its unit, as it stands in a working. */
    default String valueText() {
        String unit = unit().symbol();
        return Figures.inWorking(value()) + (unit.isEmpty() ? "" : " " + unit);
    }
}
