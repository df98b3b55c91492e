// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.List;

/**
 * How heavy a volume is. Tons of 2,000 lb a cubic yard inside.
 *
 * @param tonsPerCubicYard more than zero and finite
 */
public record Density(double tonsPerCubicYard) implements Comparable<Density> {

    /** @throws IllegalArgumentException if the density is not above zero and finite */
    public Density {
        if (!(tonsPerCubicYard > 0) || Double.isInfinite(tonsPerCubicYard)) {
            throw new IllegalArgumentException("a density must be above 0 and finite");
        }
    }

    /**
     * Reads {@code 1.4 ton/cy}, {@code 100 lb/cf} or {@code 2,700 lb/cy}.
     *
     * @throws UnreadableMeasure if the text is not a density with its unit, above zero
     */
    public static Density parse(String text) throws UnreadableMeasure {
        NumberAndUnit written =
                NumberAndUnit.read(text, "a density", "1.4 ton/cy", List.of("ton/cy", "lb/cf", "lb/cy"));
        if (written.number() == 0) {
            throw new UnreadableMeasure("a density above 0", "write it as \"1.4 ton/cy\"");
        }
        return switch (written.unit()) {
            case "lb/cf" -> new Density(written.number() * 27 / 2000);
            case "lb/cy" -> new Density(written.number() / 2000);
            default -> new Density(written.number());
        };
    }

    @Override
    public int compareTo(Density other) {
        return Double.compare(tonsPerCubicYard, other.tonsPerCubicYard);
    }
}
