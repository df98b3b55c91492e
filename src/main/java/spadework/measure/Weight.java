// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.List;

/**
 * A weight. Tons of 2,000 lb inside.
 *
 * @param tons finite and not negative
 */
public record Weight(double tons) implements Comparable<Weight> {

    /** @throws IllegalArgumentException if the weight is negative or not finite */
    public Weight {
        if (!(tons >= 0) || Double.isInfinite(tons)) {
            throw new IllegalArgumentException("a weight must be finite and not negative");
        }
    }

    /**
     * Reads {@code 10 ton} or {@code 20,000 lb}.
     *
     * @throws UnreadableMeasure if the text is not a weight with its unit
     */
    public static Weight parse(String text) throws UnreadableMeasure {
        NumberAndUnit written = NumberAndUnit.read(text, "a weight", "10 ton", List.of("ton", "tons", "lb"));
        return new Weight(written.unit().equals("lb") ? written.number() / 2000 : written.number());
    }

    @Override
    public int compareTo(Weight other) {
        return Double.compare(tons, other.tons);
    }
}
