// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.List;

/**
 * How steeply a pipe or the ground falls.
 *
 * @param ratio fall for each length, 0.01 for 1%; finite and not negative
 */
public record Slope(double ratio) implements Comparable<Slope> {

    /** @throws IllegalArgumentException if the slope is negative or not finite */
    public Slope {
        if (!(ratio >= 0) || Double.isInfinite(ratio)) {
            throw new IllegalArgumentException("a slope must be finite and not negative");
        }
    }

    /**
     * Reads {@code 0.5%}, {@code 1/8 in/ft}, {@code 0.25 in/ft} or {@code 0.01 ft/ft}.
     *
     * @throws UnreadableMeasure if the text is not a slope with its unit
     */
    public static Slope parse(String text) throws UnreadableMeasure {
        String tidy = text.strip();
        if (tidy.matches("\\d{1,3}/\\d{1,3} ?in/ft")) {
            String[] fraction = tidy.substring(0, tidy.indexOf("in/ft")).strip().split("/");
            double whole = Double.parseDouble(fraction[1]);
            if (whole > 0) {
                return new Slope(Double.parseDouble(fraction[0]) / whole / 12);
            }
        }
        NumberAndUnit written = NumberAndUnit.read(tidy, "a slope", "1%", List.of("%", "in/ft", "ft/ft"));
        return switch (written.unit()) {
            case "in/ft" -> new Slope(written.number() / 12);
            case "ft/ft" -> new Slope(written.number());
            default -> new Slope(written.number() / 100);
        };
    }

    @Override
    public int compareTo(Slope other) {
        return Double.compare(ratio, other.ratio);
    }
}
