// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An area. Square feet inside.
 *
 * @param squareFeet the area in square feet; finite and not negative
 */
public record Area(double squareFeet) {
    private static final Pattern WRITTEN = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(sf|sy|m2)");

    private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d{3})");

    /** @throws IllegalArgumentException if the area is negative or not finite */
    public Area {
        if (!(squareFeet >= 0) || Double.isInfinite(squareFeet)) {
            throw new IllegalArgumentException("an area must be finite and not negative");
        }
    }

    public static Area ofSquareFeet(double squareFeet) {
        return new Area(squareFeet);
    }

    /**
     * Reads {@code 850 sf}, {@code 94 sy} or {@code 79 m2}; a comma between thousands is allowed.
     *
     * @throws UnreadableMeasure if the text is not an area with its unit
     */
    public static Area parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(COMMA.matcher(text.strip()).replaceAll(""));
        if (!written.matches()) {
            throw new UnreadableMeasure("an area with its unit (sf, sy, m2)", "write it as \"850 sf\"");
        }
        double number = Double.parseDouble(written.group(1));
        return switch (written.group(2)) {
            case "sy" -> new Area(number * 9);
            case "m2" -> new Area(number / (0.3048 * 0.3048));
            default -> new Area(number);
        };
    }
}
