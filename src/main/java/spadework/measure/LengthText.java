// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The grammar of a written length: a sign, then one or two numbers each with its unit. */
final class LengthText {
    private static final String ALLOWED = "a length with its unit (ft, in, yd, m, cm, mm)";

    /** Feet in one of each unit; the foot and the meter by the exact definition, 0.3048 m. */
    private static final Map<String, Double> FEET =
            Map.of("ft", 1.0, "in", 1.0 / 12, "yd", 3.0, "m", 1 / 0.3048, "cm", 0.01 / 0.3048, "mm", 0.001 / 0.3048);

    private static final String NUMBER = "(\\d+(?:\\.\\d+)?(?:[ -]\\d+/\\d+)?|\\d+/\\d+|\\.\\d+)";
    private static final Pattern ONE = Pattern.compile(NUMBER + " ?(ft|in|yd|m|cm|mm)");
    private static final Pattern FEET_AND_INCHES = Pattern.compile("(\\d+) ?ft[ -]*" + NUMBER + " ?in");
    private static final Pattern TIDY = Pattern.compile("\\d+(?:\\.\\d+)? (?:ft|in)(?: \\d+ in)?");
    private static final Pattern FOOT_MARK = Pattern.compile("[\u2032\u2019']");
    private static final Pattern INCH_MARK = Pattern.compile("[\u2033\u201d\"]");
    private static final Pattern FOOT_WORD = Pattern.compile("(?i)\\b(feet|foot|ft)\\b\\.?");
    private static final Pattern INCH_WORD = Pattern.compile("(?i)\\b(inches|inch|in)\\b\\.?");
    private static final Pattern YARD_WORD = Pattern.compile("(?i)\\b(yards|yard|yd)\\b\\.?");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern BETWEEN = Pattern.compile("[ -]");
    private static final Pattern BARE = Pattern.compile("[+-]?" + NUMBER);

    private LengthText() {}

    static Length read(String written) throws UnreadableMeasure {
        String text = tidy(written);
        if (BARE.matcher(text).matches()) {
            throw new UnreadableMeasure(ALLOWED, "write the unit, as \"" + text + " ft\"");
        }
        boolean negative = text.startsWith("-");
        String size = negative ? text.substring(1).strip() : text;
        double feet = magnitude(size);
        return new Length(negative ? -feet : feet);
    }

    private static double magnitude(String text) throws UnreadableMeasure {
        Matcher both = FEET_AND_INCHES.matcher(text);
        if (both.matches()) {
            double inches = number(both.group(2));
            if (inches >= 12) {
                throw new UnreadableMeasure(ALLOWED, "inches behind feet stay under 12, as \"5 ft 6 in\"");
            }
            return Double.parseDouble(both.group(1)) + inches / 12;
        }
        Matcher one = ONE.matcher(text);
        if (one.matches()) {
            return number(one.group(1)) * FEET.get(one.group(2));
        }
        throw new UnreadableMeasure(ALLOWED, "write it as \"46 ft 6 in\", \"46' 6\\\"\", \"46.5 ft\" or \"14.2 m\"");
    }

    /** A whole or decimal number, a fraction, or a whole number and a fraction. */
    private static double number(String text) throws UnreadableMeasure {
        String[] parts = BETWEEN.split(text);
        double sum = 0;
        for (String part : parts) {
            String[] fraction = part.split("/");
            if (fraction.length == 2 && Double.parseDouble(fraction[1]) == 0) {
                throw new UnreadableMeasure(ALLOWED, "a fraction needs a denominator that is not zero");
            }
            sum += fraction.length == 2
                    ? Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1])
                    : Double.parseDouble(part);
        }
        return sum;
    }

    /** One spelling for each unit, single spaces, plain signs and fractions. */
    private static String tidy(String written) {
        if (TIDY.matcher(written).matches()) {
            return written;
        }
        String signs = written.strip()
                .replace('\u2212', '-')
                .replace("½", " 1/2")
                .replace("¼", " 1/4")
                .replace("¾", " 3/4");
        String marks = each(INCH_MARK, each(FOOT_MARK, signs, " ft "), " in ");
        String words = each(YARD_WORD, each(INCH_WORD, each(FOOT_WORD, marks, "ft"), "in"), "yd");
        return each(SPACES, words, " ").strip();
    }

    private static String each(Pattern found, String text, String spelling) {
        return found.matcher(text).replaceAll(spelling);
    }
}
