package spadework.intake;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import spadework.measure.Unit;
import spadework.measure.UnreadableMeasure;

/** A number with the symbol of its unit, as {@code 12 cy}. */
record Quantity(BigDecimal number, Unit unit) {
    private static final Pattern WRITTEN =
            Pattern.compile("(-?(?:\\d{1,3}(?:,\\d{3}){1,3}|\\d{1,9})(?:\\.\\d{1,9})?) ?(\\S{1,10})");
    private static final String SYMBOLS = Arrays.stream(Unit.values())
            .filter(Unit::isCounted)
            .map(Unit::symbol)
            .collect(Collectors.joining(", "));
    private static final String WHAT = "a number and its unit (" + SYMBOLS + ")";
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    /** A quantity in any unit. */
    static final Kind<Quantity> ANY = Written.kind(
            WHAT,
            "12 cy",
            Quantity::parse,
            new Limits<>(
                    "above 0, at most 1,000,000",
                    quantity -> quantity.number.signum() > 0 && quantity.number.compareTo(MOST) <= 0),
            new Quantity(BigDecimal.ONE, Unit.NONE));

    /** A quantity in any unit, below zero for what is given back. */
    static final Kind<Quantity> SIGNED = Written.kind(
            WHAT,
            "12 cy",
            Quantity::parse,
            new Limits<>(
                    "from -1,000,000 to 1,000,000, not 0",
                    quantity -> quantity.number.signum() != 0
                            && quantity.number.abs().compareTo(MOST) <= 0),
            new Quantity(BigDecimal.ONE, Unit.NONE));

    /** A quantity in one unit, within limits that are told in it. */
    static Kind<Quantity> in(Unit unit, String least, String most) {
        String example = most + " " + unit.symbol();
        Limits<Quantity> limits = new Limits<>(
                "from " + least + " to " + example,
                quantity -> quantity.number.compareTo(new BigDecimal(least)) >= 0
                        && quantity.number.compareTo(new BigDecimal(most)) <= 0
                        && quantity.unit == unit);
        return Written.kind(
                "a number in " + unit.symbol(), example, Quantity::parse, limits, new Quantity(BigDecimal.ONE, unit));
    }

    private static Quantity parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        Optional<Unit> unit = written.matches() ? Unit.findBySymbol(written.group(2)) : Optional.empty();
        if (unit.isEmpty()) {
            throw new UnreadableMeasure(WHAT, "write it as \"12 cy\"");
        }
        return new Quantity(new BigDecimal(written.group(1).replace(",", "")), unit.get());
    }
}
