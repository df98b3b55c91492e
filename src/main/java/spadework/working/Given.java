// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.math.BigDecimal;
import spadework.measure.Unit;

/**
 * A number the job states.
 *
 * @param source where the job states it, as a JSON pointer
 */
public record Given(String symbol, String name, Amount amount, Unit unit, String source) implements Working {

    public Given(String symbol, String name, BigDecimal value, Unit unit, String source) {
        this(symbol, name, Amount.of(value), unit, source);
    }

    public static Given of(String symbol, String name, double value, Unit unit, String source) {
        return new Given(symbol, name, Amount.of(value), unit, source);
    }

    /** The number of another working, which is given here. */
    public static Given of(String symbol, Working known) {
        return new Given(symbol, known.name(), known.amount(), known.unit(), known.source());
    }
}
