package spadework.intake;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.measure.Percent;
import spadework.measure.UnreadableMeasure;

/** Percentages, exact. */
final class Shares {
    private static final String WHAT = "a percentage";
    private static final Pattern WRITTEN = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?) ?%");

    private Shares() {}

    static Kind<Percent> fromZeroTo(int points) {
        return kind(Limits.between(Percent.ZERO, percent(points), Percent::text));
    }

    static Kind<Percent> fromZeroToUnder(int points) {
        return kind(Limits.under(Percent.ZERO, percent(points), Percent::text));
    }

    static Kind<Percent> aboveZeroTo(int points) {
        return kind(Limits.above(Percent.ZERO, percent(points), Percent::text));
    }

    private static Kind<Percent> kind(Limits<Percent> limits) {
        return Written.kind(WHAT, "12 %", Shares::parse, limits, Percent.ZERO);
    }

    private static Percent percent(int points) {
        return Percent.of(Integer.toString(points));
    }

    private static Percent parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        if (!written.matches()) {
            throw new UnreadableMeasure(WHAT, "write it as \"12 %\"");
        }
        return Percent.of(written.group(1));
    }
}
