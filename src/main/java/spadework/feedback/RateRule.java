// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** How a new rate is drawn from what jobs really took. Common practice, no source. */
public enum RateRule {
    /** The middle one of the last five jobs, for at least three: one odd job does not move it. */
    MEDIAN,
    /** From the old rate a quarter of the way to each job in turn, the oldest first: old + 0.25 × (actual − old). */
    STEP;

    /** How many jobs the median looks back. */
    public static final int LAST = 5;
    /** The fewest that make a median. */
    public static final int FEWEST = 3;

    private static final BigDecimal PART = new BigDecimal("0.25");

    /**
     * The new rate.
     *
     * @param old the rate of the book
     * @param actual the rates of the jobs, oldest first, at least one
     */
    BigDecimal of(BigDecimal old, List<BigDecimal> actual) {
        if (this == STEP) {
            BigDecimal rate = old;
            for (BigDecimal one : actual) {
                rate = rate.add(one.subtract(rate).multiply(PART), MathContext.DECIMAL64);
            }
            return rate;
        }
        List<BigDecimal> last = actual.subList(Math.max(0, actual.size() - LAST), actual.size()).stream()
                .sorted()
                .toList();
        int middle = last.size() / 2;
        return last.size() % 2 == 1
                ? last.get(middle)
                : last.get(middle - 1).add(last.get(middle)).divide(BigDecimal.valueOf(2), MathContext.DECIMAL64);
    }

    /** Whether so many jobs are enough for it. */
    boolean isEnough(int jobs) {
        return jobs >= (this == MEDIAN ? FEWEST : 1);
    }
}
