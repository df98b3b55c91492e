// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.measure.Length;
import spadework.measure.UnreadableMeasure;
import spadework.spelling.UsStates;

/**
 * What somebody typed, in the full form of a file: a bare number gets the unit of its field, {@code 26'6} becomes
 * {@code 26 ft 6 in}, {@code 12/31/2027} becomes {@code 2027-12-31}, {@code y} becomes yes. What has two likely
 * readings
 * or none stays as it was typed, so that the reader can say what is wrong with it.
 */
public final class TypedValue {
    private static final Pattern BARE = Pattern.compile("(?:\\d{1,3}(?:,\\d{3})+|\\d+)?(?:\\.\\d+)?");
    private static final Pattern BARE_LENGTH =
            Pattern.compile("-?(?:\\d+(?:\\.\\d+)?(?: \\d+/\\d+)?|\\d+/\\d+|\\.\\d+)");
    /** {@code 26'6}, {@code 26 ft 6}, and as tape readings are called out, {@code 26 6} and {@code 26-6}. */
    private static final Pattern INCHES_WITHOUT_UNIT =
            Pattern.compile("(\\d+)(?: ft |[ -])((?:\\d|1[01])(?:\\.\\d+)?(?: \\d+/\\d+)?)");

    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([\\d.,]+) ?([a-zA-Z/%\"]+[a-zA-Z/%]*)\\.?");
    private static final Pattern FIRST_UNIT = Pattern.compile("^[^a-zA-Z%$]+ ([^ ]+).*$");
    private static final Pattern SLASHED = Pattern.compile("(\\d{1,2})[/.-](\\d{1,2})[/.-](\\d{4}|\\d{2})");
    private static final Pattern NAMED_MONTH =
            Pattern.compile("([a-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4})");
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    /** How people write the units that the format spells in one way. */
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("mils", "mil"),
            Map.entry("sqft", "sf"),
            Map.entry("ft2", "sf"),
            Map.entry("sqyd", "sy"),
            Map.entry("yd3", "cy"),
            Map.entry("in/hr", "in/h"),
            Map.entry("mm/hr", "mm/h"),
            Map.entry("gals", "gal"),
            Map.entry("hrs", "h"),
            Map.entry("hr", "h"),
            Map.entry("hours", "h"),
            Map.entry("days", "day"),
            Map.entry("tons", "ton"),
            Map.entry("lbs", "lb"));

    private TypedValue() {}

    /** The full form of what was typed at a place. */
    public static String inFull(SchemaField spot, String typed) {
        if (spot.kind() == FieldKind.TEXT) {
            return typed;
        }
        String plain = typed.strip().replaceAll("\\s+", " ");
        return switch (spot.kind()) {
            case LENGTH, LEVEL -> length(plain, spot);
            case AREA, RAIN, FILM, FLOW, QUANTITY, PERCENT -> measure(plain, spot);
            case MONEY -> money(plain);
            case DATE -> date(plain);
            case COUNT, RATIO -> BARE.matcher(plain).matches() ? plain.replace(",", "") : plain;
            case YES_OR_NO -> yesOrNo(plain);
            case CHOICE -> choice(plain, spot.choices());
            default -> typed.strip();
        };
    }

    private static String length(String plain, SchemaField spot) {
        String tidy = spelled(plain);
        String unit = unit(spot, "ft");
        Matcher tape = INCHES_WITHOUT_UNIT.matcher(tidy);
        if (tape.matches() && (unit.equals("ft") || tidy.contains("ft"))) {
            return tape.group(1) + " ft " + tape.group(2) + " in";
        }
        if (BARE_LENGTH.matcher(tidy).matches()) {
            return isFarBelowUsual(tidy + " " + unit, spot) ? plain : tidy + " " + unit;
        }
        return isSame(plain, tidy) ? tidy : plain;
    }

    private static String spelled(String typed) {
        return typed.replaceAll("[\u2032\u2019']", " ft ")
                .replaceAll("[\u2033\u201d\"]", " in ")
                .replaceAll("(?i)(?<![a-z])(feet|foot|ft)(?![a-z])\\.?", " ft ")
                .replaceAll("(?i)(?<![a-z])(inches|inch|in)(?![a-z])\\.?", " in ")
                .replaceAll("(?i)(?<![a-z])(yards|yard|yd)(?![a-z])\\.?", " yd ")
                .replaceAll("(?<= ft ) *- *", " ")
                .replaceAll("(?<=\\d)(?=[a-zA-Z])", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }

    /**
     * Where 24 in is usual, 3 may as well mean feet: less than a quarter of the usual inches is not taken for inches.
     */
    private static boolean isFarBelowUsual(String read, SchemaField spot) {
        Optional<Length> usual = spot.usual().or(spot::example).flatMap(TypedValue::parsed);
        Optional<Length> meant = parsed(read);
        return read.endsWith(" in")
                && usual.isPresent()
                && meant.isPresent()
                && meant.get().feet() > 0
                && meant.get().feet() < usual.get().feet() / 4;
    }

    private static Optional<Length> parsed(String text) {
        try {
            return Optional.of(Length.parse(text));
        } catch (UnreadableMeasure unreadable) {
            return Optional.empty();
        }
    }

    private static boolean isSame(String typed, String tidy) {
        return parsed(typed).isPresent() && parsed(typed).equals(parsed(tidy));
    }

    private static String measure(String plain, SchemaField spot) {
        if (spot.kind() == FieldKind.PERCENT) {
            return isNumber(plain) ? plain + "%" : plain.replaceFirst("(?<=\\d) %$", "%");
        }
        if (isNumber(plain)) {
            boolean thinAsMillimeters =
                    spot.kind() == FieldKind.FILM && number(plain).compareTo(BigDecimal.valueOf(5)) < 0;
            String unit = spot.kind() == FieldKind.QUANTITY ? "" : unit(spot, "");
            return unit.isEmpty() || (thinAsMillimeters && number(plain).signum() > 0) ? plain : plain + " " + unit;
        }
        Matcher both =
                NUMBER_AND_UNIT.matcher(plain.replaceAll("(?i)\\bsq\\.? ", "sq").replaceAll("(?i)\\bper\\b ?", "/"));
        if (!both.matches()) {
            return plain;
        }
        String unit = both.group(2).toLowerCase(Locale.ROOT);
        return both.group(1) + " " + UNITS.getOrDefault(unit, unit);
    }

    private static String money(String plain) {
        String sign = plain.startsWith("-") || plain.startsWith("\u2212") ? "-" : "";
        String amount = plain.substring(sign.length()).replace("$", "").replace(" ", "");
        if (!isNumber(amount)) {
            return plain;
        }
        BigDecimal exact = number(amount);
        return exact.scale() > 2 ? plain : sign + "$" + String.format(Locale.ROOT, "%,.2f", exact);
    }

    private static String date(String plain) {
        Matcher slashed = SLASHED.matcher(plain);
        if (slashed.matches()) {
            int year = Integer.parseInt(slashed.group(3));
            return day(plain, year < 100 ? 2000 + year : year, Integer.parseInt(slashed.group(1)), slashed.group(2));
        }
        Matcher named = NAMED_MONTH.matcher(plain.toLowerCase(Locale.ROOT));
        if (named.matches()) {
            int month = MONTHS.indexOf(named.group(1).substring(0, 3)) + 1;
            return day(plain, Integer.parseInt(named.group(3)), month, named.group(2));
        }
        return plain;
    }

    private static String day(String plain, int year, int month, String day) {
        try {
            return LocalDate.of(year, month, Integer.parseInt(day)).toString();
        } catch (DateTimeException noSuchDay) {
            return plain;
        }
    }

    private static String yesOrNo(String plain) {
        return switch (plain.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "true" -> "true";
            case "no", "n", "false" -> "false";
            default -> plain;
        };
    }

    private static String choice(String plain, List<String> choices) {
        return choices.stream()
                .filter(choice -> choice.equalsIgnoreCase(plain))
                .findFirst()
                .or(() -> Optional.of(yesOrNo(plain)).filter(choices::contains))
                .orElseGet(
                        () -> UsStates.letters(plain).filter(choices::contains).orElse(plain));
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && !text.equals(".") && BARE.matcher(text).matches();
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text.replace(",", ""));
    }

    /** The unit in which the place is written as a rule. */
    private static String unit(SchemaField spot, String otherwise) {
        return spot.usual()
                .filter(usual -> usual.contains(" "))
                .or(spot::example)
                .map(written -> FIRST_UNIT.matcher(written).replaceFirst("$1"))
                .orElse(otherwise);
    }
}
