// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.intake.source.ValueKind;
import spadework.measure.Percent;
import spadework.measure.UnreadableMeasure;

/** Percentages, exact. */
public final class Shares {
    private static final String WHAT = "a percentage";
    private static final Pattern WRITTEN = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?) ?%");

    private Shares() {}

    public static ValueKind<Percent> fromZeroTo(int points) {
        return kind(Limits.between(Percent.ZERO, percent(points), Percent::text));
    }

    public static ValueKind<Percent> fromZeroToUnder(int points) {
        return kind(Limits.under(Percent.ZERO, percent(points), Percent::text));
    }

    public static ValueKind<Percent> aboveZeroTo(int points) {
        return kind(Limits.above(Percent.ZERO, percent(points), Percent::text));
    }

    private static ValueKind<Percent> kind(Limits<Percent> limits) {
        return TextWithUnit.kind(WHAT, "12%", Shares::parse, limits, Percent.ZERO);
    }

    private static Percent percent(int points) {
        return Percent.of(Integer.toString(points));
    }

    private static Percent parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        if (!written.matches()) {
            throw new UnreadableMeasure(WHAT, "write it as \"12%\"");
        }
        return Percent.of(written.group(1));
    }
}
