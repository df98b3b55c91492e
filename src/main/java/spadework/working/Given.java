// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.math.BigDecimal;
import spadework.measure.Unit;

/**
 * A number the job states.
 *
 * @param source where the job states it, as a JSON pointer
 */
public record Given(String symbol, String name, BigDecimal value, Unit unit, String source) implements Working {

    public static Given of(String symbol, String name, double value, Unit unit, String source) {
        return new Given(symbol, name, BigDecimal.valueOf(value), unit, source);
    }
}
