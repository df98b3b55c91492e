// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import spadework.measure.Figures;
import spadework.measure.Unit;

/**
 * A number that was worked out. The formula is written with the symbols of the inputs, so that the words and the
 * figures are the same formula twice; a test evaluates every formula of every sample against its value.
 *
 * @param formula in symbols, with {@code + − × ÷ ^ ( ) max min ceil sum}
 * @param source published source of the formula, or {@code common practice, no source}
 */
public record Worked(
        String symbol, String name, BigDecimal value, Unit unit, String formula, String source, List<Working> inputs)
        implements Working {
    private static final Pattern SYMBOL = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

    public Worked {
        inputs = List.copyOf(inputs);
    }

    /** A worked number; {@code value} must be what {@code formula} gives for {@code inputs}. */
    public static Worked of(String symbol, String name, double value, Unit unit, Formula formula, Working... inputs) {
        return new Worked(
                symbol, name, BigDecimal.valueOf(value), unit, formula.text(), formula.source(), List.of(inputs));
    }

    /** The same number under another symbol, for a formula that takes several of its kind. */
    public Worked as(String other) {
        return new Worked(other, name, value, unit, formula, source, inputs);
    }

    /** The formula with each symbol replaced by its figure. */
    public String figures() {
        Map<String, BigDecimal> known =
                inputs.stream().collect(Collectors.toMap(Working::symbol, Working::value, (first, same) -> first));
        return SYMBOL.matcher(formula)
                .replaceAll(found -> Matcher.quoteReplacement(
                        known.containsKey(found.group()) ? figure(known.get(found.group())) : found.group()));
    }

    private static String figure(BigDecimal value) {
        String text = Figures.inWorking(value);
        return value.signum() < 0 ? "(" + text + ")" : text;
    }

    /** The whole derivation on one line: {@code B × H = 2 × 5.667 = 11.3 sf}. */
    public String line() {
        String figures = figures();
        boolean plain = inputs.size() == 1 && formula.equals(inputs.get(0).symbol());
        return plain ? formula + " = " + valueText() : formula + " = " + figures + " = " + valueText();
    }
}
