// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * A number that is known only between two ends.
 *
 * @param low the least it is likely to be
 * @param high the most it is likely to be; what is sized is sized for this end
 */
public record Range(Worked low, Worked high) {

    /** The same number at both ends. */
    public static Range of(Worked exact) {
        return new Range(exact, exact);
    }

    /** Ends added to ends. */
    static Range sum(String symbol, String name, List<Range> parts) {
        return new Range(
                add(symbol, name + ", low end", parts, Range::low),
                add(symbol, name + ", high end", parts, Range::high));
    }

    private static Worked add(String symbol, String name, List<Range> parts, Function<Range, Worked> end) {
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (Range part : parts) {
            Worked each = end.apply(part).as(symbol + (inputs.size() + 1));
            inputs.add(each);
            formula.append(formula.isEmpty() ? "" : " + ").append(each.symbol());
            sum += each.number();
        }
        return Worked.of(
                symbol,
                name,
                sum,
                Unit.GALLON_PER_MINUTE,
                new Formula(formula.isEmpty() ? "0" : formula.toString(), "what flows in adds up"),
                inputs.toArray(Working[]::new));
    }
}
