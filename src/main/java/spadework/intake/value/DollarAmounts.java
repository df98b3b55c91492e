// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.intake.source.ValueKind;
import spadework.measure.UnreadableMeasure;
import spadework.money.Dollars;

/** Money in dollars and whole cents. */
public final class DollarAmounts {
    private static final String WHAT = "dollars and at most two decimals";
    private static final Pattern WRITTEN =
            Pattern.compile("([-\u2212]?)\\$((?:\\d{1,3}(?:,\\d{3}){1,4}|\\d{1,12})(?:\\.\\d{1,2})?)");
    private static final Dollars MOST = Dollars.of("10000000");

    public static final ValueKind<Dollars> FROM_ZERO = kind(Limits.between(Dollars.ZERO, MOST, Dollars::text));
    public static final ValueKind<Dollars> SIGNED = kind(Limits.between(Dollars.ZERO.minus(MOST), MOST, Dollars::text));
    public static final ValueKind<Dollars> ABOVE_ZERO = kind(Limits.above(Dollars.ZERO, MOST, Dollars::text));

    private DollarAmounts() {}

    private static ValueKind<Dollars> kind(Limits<Dollars> limits) {
        return TextWithUnit.kind(WHAT, "$1,234.50", DollarAmounts::parse, limits, Dollars.ZERO);
    }

    private static Dollars parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        if (!written.matches()) {
            throw new UnreadableMeasure(WHAT, "write it as \"$1,234.50\"");
        }
        Dollars amount = Dollars.of(written.group(2).replace(",", ""));
        return written.group(1).isEmpty() ? amount : Dollars.ZERO.minus(amount);
    }
}
