// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The thickness of a coat. Mils inside (1 mil = 0.001 in).
 *
 * @param mils thickness in mils; more than zero, at most 1,000
 */
public record FilmThickness(double mils) implements Comparable<FilmThickness> {
    private static final double MILLIMETERS_IN_A_MIL = 0.0254;

    private static final Pattern WRITTEN = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(mil|mm)");

    /** @throws IllegalArgumentException if the thickness is not above zero and at most 1,000 mil */
    public FilmThickness {
        if (!(mils > 0 && mils <= 1000)) {
            throw new IllegalArgumentException("a film must be above 0 and at most 1000 mil");
        }
    }

    /**
     * Reads {@code 60 mil} or {@code 1.5 mm}.
     *
     * @throws UnreadableMeasure if the text is not a thickness with its unit
     */
    public static FilmThickness parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        String allowed = "a film thickness with its unit (mil, mm), above 0 and at most 1000 mil";
        if (!written.matches()) {
            throw new UnreadableMeasure(allowed, "write it as \"60 mil\"");
        }
        double number = Double.parseDouble(written.group(1));
        double mils = written.group(2).equals("mm") ? number / MILLIMETERS_IN_A_MIL : number;
        if (!(mils > 0 && mils <= 1000)) {
            throw new UnreadableMeasure(allowed, "write it as \"60 mil\"");
        }
        return new FilmThickness(mils);
    }

    /** A thickness in millimeters; above 0 and at most 25.4 (1 mil = 0.0254 mm exactly). */
    public static FilmThickness ofMillimeters(double millimeters) {
        return new FilmThickness(millimeters / MILLIMETERS_IN_A_MIL);
    }

    /** Millimeters. */
    public double millimeters() {
        return mils * MILLIMETERS_IN_A_MIL;
    }

    /** Text for people: {@code 60 mil}; with its metric equal where it is no whole mil, {@code 59.1 mil (1.5 mm)}. */
    public String text() {
        boolean whole = Math.abs(mils - Math.rint(mils)) < 1e-9;
        return whole
                ? String.format(Locale.ROOT, "%.0f mil", mils)
                : tidy(mils, 1) + " mil (" + tidy(millimeters(), 3) + " mm)";
    }

    private static String tidy(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value).replaceAll("\\.?0+$", "");
    }

    @Override
    public int compareTo(FilmThickness other) {
        return Double.compare(mils, other.mils);
    }
}
