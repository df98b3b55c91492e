// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.List;

/**
 * A volume. Cubic feet inside.
 *
 * @param cubicFeet the volume in cubic feet; finite and not negative
 */
public record Volume(double cubicFeet) implements Comparable<Volume> {
    /** 231 cu in in a US gallon, 1,728 in a cubic foot. */
    private static final double CUBIC_FEET_PER_GALLON = 231.0 / 1728;

    /** @throws IllegalArgumentException if the volume is negative or not finite */
    public Volume {
        if (!(cubicFeet >= 0) || Double.isInfinite(cubicFeet)) {
            throw new IllegalArgumentException("a volume must be finite and not negative");
        }
    }

    public static Volume ofCubicYards(double cubicYards) {
        return new Volume(cubicYards * 27);
    }

    /**
     * Reads {@code 1,000 cy}, {@code 54 cf}, {@code 5 gal} or {@code 3 m3}.
     *
     * @throws UnreadableMeasure if the text is not a volume with its unit
     */
    public static Volume parse(String text) throws UnreadableMeasure {
        NumberAndUnit written = NumberAndUnit.read(text, "a volume", "10 cy", List.of("cy", "cf", "gal", "m3"));
        return switch (written.unit()) {
            case "cf" -> new Volume(written.number());
            case "gal" -> new Volume(written.number() * CUBIC_FEET_PER_GALLON);
            case "m3" -> new Volume(written.number() / (0.3048 * 0.3048 * 0.3048));
            default -> ofCubicYards(written.number());
        };
    }

    public double cubicYards() {
        return cubicFeet / 27;
    }

    public double gallons() {
        return cubicFeet / CUBIC_FEET_PER_GALLON;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicFeet, other.cubicFeet);
    }
}
