// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.math.BigDecimal;
import spadework.measure.Unit;

/**
 * A number from a book, a table or a company's own settings.
 *
 * @param source which book or table, and its date or edition
 */
public record Listed(String symbol, String name, Amount amount, Unit unit, String source) implements Working {

    public Listed(String symbol, String name, BigDecimal value, Unit unit, String source) {
        this(symbol, name, Amount.of(value), unit, source);
    }

    public static Listed of(String symbol, String name, double value, Unit unit, String source) {
        return new Listed(symbol, name, Amount.of(value), unit, source);
    }
}
