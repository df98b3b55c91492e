// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import spadework.measure.Figures;
import spadework.measure.Unit;

/**
 * A number that was worked out. The formula is written with the symbols of the inputs, so that the words and the
 * figures are the same formula twice; a test evaluates every formula of every sample against its value.
 */
public final class Worked implements Working {
    private static final Pattern SYMBOL = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

    private final String symbol;
    private final String name;
    private final Unit unit;
    private final Formula formula;
    private final List<Working> inputs;
    private final Amount amount;

    private Worked(String symbol, String name, Amount amount, Unit unit, Formula formula, List<Working> inputs) {
        this.symbol = symbol;
        this.name = name;
        this.amount = amount;
        this.unit = unit;
        this.formula = formula;
        this.inputs = List.copyOf(inputs);
    }

    /** A worked number; {@code value} must be what {@code formula} gives for {@code inputs}. */
    public static Worked of(String symbol, String name, double value, Unit unit, Formula formula, Working... inputs) {
        return new Worked(symbol, name, Amount.of(value), unit, formula, List.of(inputs));
    }

    /** The same of an exact decimal. */
    public static Worked of(
            String symbol, String name, BigDecimal value, Unit unit, Formula formula, Working... inputs) {
        return new Worked(symbol, name, Amount.of(value), unit, formula, List.of(inputs));
    }

    /** The same number under another symbol, for a formula that takes several of its kind. */
    public Worked as(String other) {
        return as(other, name);
    }

    /** The same number under another symbol and name. */
    public Worked as(String other, String called) {
        return new Worked(other, called, amount, unit, formula, inputs);
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Amount amount() {
        return amount;
    }

    @Override
    public Unit unit() {
        return unit;
    }

    /** In symbols, with {@code + − × ÷ ^ ( ) max min ceil sum}. */
    public String formula() {
        return formula.text();
    }

    /** Published source of the formula, or {@code common practice, no source}. */
    @Override
    public String source() {
        return formula.source();
    }

    @Override
    public List<Working> inputs() {
        return inputs;
    }

    /** The formula with each symbol replaced by its figure. */
    public String figures() {
        Map<String, BigDecimal> known =
                inputs.stream().collect(Collectors.toMap(Working::symbol, Working::value, (first, same) -> first));
        return SYMBOL.matcher(formula())
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
        boolean plain = inputs.size() == 1 && formula().equals(inputs.get(0).symbol());
        return plain ? formula() + " = " + valueText() : formula() + " = " + figures + " = " + valueText();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Worked worked
                && symbol.equals(worked.symbol)
                && name.equals(worked.name)
                && amount.equals(worked.amount)
                && unit == worked.unit
                && formula.equals(worked.formula)
                && inputs.equals(worked.inputs);
    }

    @Override
    public int hashCode() {
        return Objects.hash(symbol, name, amount.number(), unit, formula);
    }

    @Override
    public String toString() {
        return symbol + ": " + line();
    }
}
