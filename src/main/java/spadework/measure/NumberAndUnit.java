// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The grammar of a number with its unit: {@code 60 gpm}, {@code 1,000 cy}, {@code 0.5%}. */
record NumberAndUnit(double number, String unit) {
    private static final Pattern WRITTEN =
            Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?|\\.\\d{1,9}) ?([a-z%/][a-z0-9%/]*)");

    private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");

    /**
     * Reads a number of at most nine digits on either side of the point, then one of the units; a comma between
     * thousands and the space before the unit may be there or not.
     *
     * @param what the measure in words, as {@code a flow}
     * @param example what a good one looks like
     * @throws UnreadableMeasure if the text is anything else
     */
    static NumberAndUnit read(String text, String what, String example, List<String> units) throws UnreadableMeasure {
        String allowed = what + " with its unit (" + String.join(", ", units) + ")";
        Matcher written = WRITTEN.matcher(COMMA.matcher(text.strip()).replaceAll(""));
        if (!written.matches() || !units.contains(written.group(2))) {
            throw new UnreadableMeasure(allowed, "write it as \"" + example + "\"");
        }
        return new NumberAndUnit(Double.parseDouble(written.group(1)), written.group(2));
    }
}
