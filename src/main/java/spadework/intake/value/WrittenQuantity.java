// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import spadework.intake.source.ValueKind;
import spadework.measure.Unit;
import spadework.measure.UnreadableMeasure;

/** A number with the symbol of its unit, as {@code 12 cy}. */
public record WrittenQuantity(BigDecimal number, Unit unit) {
    private static final Pattern WRITTEN =
            Pattern.compile("(-?(?:\\d{1,3}(?:,\\d{3}){1,3}|\\d{1,9})(?:\\.\\d{1,9})?) ?(\\S{1,10})");
    private static final String SYMBOLS = Arrays.stream(Unit.values())
            .filter(Unit::isCounted)
            .map(Unit::symbol)
            .collect(Collectors.joining(", "));
    private static final String WHAT = "a number and its unit (" + SYMBOLS + ")";
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    /** A quantity in any unit. */
    public static final ValueKind<WrittenQuantity> ANY = TextWithUnit.kind(
            WHAT,
            "12 cy",
            WrittenQuantity::parse,
            new Limits<>(
                    "above 0, at most 1,000,000",
                    quantity -> quantity.number.signum() > 0 && quantity.number.compareTo(MOST) <= 0),
            new WrittenQuantity(BigDecimal.ONE, Unit.NONE));

    /** A quantity in any unit, below zero for what is given back. */
    public static final ValueKind<WrittenQuantity> SIGNED = TextWithUnit.kind(
            WHAT,
            "12 cy",
            WrittenQuantity::parse,
            new Limits<>(
                    "from -1,000,000 to 1,000,000, not 0",
                    quantity -> quantity.number.signum() != 0
                            && quantity.number.abs().compareTo(MOST) <= 0),
            new WrittenQuantity(BigDecimal.ONE, Unit.NONE));

    /** A quantity in one unit, within limits that are stated in it. */
    public static ValueKind<WrittenQuantity> in(Unit unit, String least, String most) {
        String example = most + " " + unit.symbol();
        Limits<WrittenQuantity> limits = new Limits<>(
                "from " + least + " to " + example,
                quantity -> quantity.number.compareTo(new BigDecimal(least)) >= 0
                        && quantity.number.compareTo(new BigDecimal(most)) <= 0
                        && quantity.unit == unit);
        return TextWithUnit.kind(
                "a number in " + unit.symbol(),
                example,
                WrittenQuantity::parse,
                limits,
                new WrittenQuantity(BigDecimal.ONE, unit));
    }

    private static WrittenQuantity parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        Optional<Unit> unit = written.matches() ? Unit.findBySymbol(written.group(2)) : Optional.empty();
        if (unit.isEmpty()) {
            throw new UnreadableMeasure(WHAT, "write it as \"12 cy\"");
        }
        return new WrittenQuantity(new BigDecimal(written.group(1).replace(",", "")), unit.get());
    }
}
