// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.math.BigDecimal;
import java.util.List;

/**
 * An exact percentage, as {@code 12%}. One third is not a percentage here: shares that the law states as a
 * fraction stay a fraction (see the law package).
 *
 * @param points the number before the percent sign, 12 for 12%
 */
public record Percent(BigDecimal points) implements Comparable<Percent> {

    public static final Percent ZERO = new Percent(BigDecimal.ZERO);

    public static final Percent HUNDRED = new Percent(BigDecimal.valueOf(100));

    public static Percent of(String points) {
        return new Percent(new BigDecimal(points));
    }

    /**
     * Reads {@code 30%} or {@code 6.25%}.
     *
     * @throws UnreadableMeasure if the text is not a percentage
     */
    public static Percent parse(String text) throws UnreadableMeasure {
        NumberAndUnit written = NumberAndUnit.read(text, "a percentage", "30%", List.of("%"));
        return new Percent(BigDecimal.valueOf(written.number()));
    }

    /** The percentage as a decimal fraction, 0.12 for 12%; exact. */
    public BigDecimal fraction() {
        return points.movePointLeft(2);
    }

    public Percent plus(Percent other) {
        return new Percent(points.add(other.points));
    }

    public boolean isZero() {
        return points.signum() == 0;
    }

    /** Text for people, as {@code 12%} or {@code 6.25%}. */
    public String text() {
        BigDecimal tidy = points.stripTrailingZeros();
        return (tidy.scale() < 0 ? tidy.setScale(0) : tidy).toPlainString() + "%";
    }

    /** Equal by value: 12% equals 12.0%. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Percent that && points.compareTo(that.points) == 0;
    }

    @Override
    public int hashCode() {
        return points.stripTrailingZeros().hashCode();
    }

    @Override
    public int compareTo(Percent other) {
        return points.compareTo(other.points);
    }

    @Override
    public String toString() {
        return text();
    }
}
