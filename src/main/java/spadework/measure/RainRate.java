// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How hard it rains. Inches per hour inside.
 *
 * @param inchesPerHour rain intensity; more than zero, at most 60
 */
public record RainRate(double inchesPerHour) {
    private static final Pattern WRITTEN = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(in/h|mm/h)");

    /** @throws IllegalArgumentException if the rate is not above zero and at most 60 in/h */
    public RainRate {
        if (!(inchesPerHour > 0 && inchesPerHour <= 60)) {
            throw new IllegalArgumentException("rain must be above 0 and at most 60 in/h");
        }
    }

    /**
     * Reads {@code 3 in/h} or {@code 76 mm/h}.
     *
     * @throws UnreadableMeasure if the text is not a rain intensity with its unit
     */
    public static RainRate parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        String allowed = "a rain intensity with its unit (in/h, mm/h), above 0 and at most 60 in/h";
        if (!written.matches()) {
            throw new UnreadableMeasure(allowed, "write it as \"3 in/h\"");
        }
        double number = Double.parseDouble(written.group(1));
        double inches = written.group(2).equals("mm/h") ? number / 25.4 : number;
        if (!(inches > 0 && inches <= 60)) {
            throw new UnreadableMeasure(allowed, "look the value up again; write it as \"3 in/h\"");
        }
        return new RainRate(inches);
    }
}
