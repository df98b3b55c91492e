// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomDataGenerator;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * The random numbers of a number of runs: the same seed draws the same numbers in the same order. They are a Latin
 * hypercube: the first number of every run, taken over all runs, falls once into each of as many equally likely bands,
 * so does the second, and so on, in an order of their own. Few runs then tell as much as many that are drawn blindly
 * (M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21, 1979, pages 239 to 245).
 */
public final class RandomDraws {
    private final int runs;
    private final RandomGenerator random;
    private final List<int[]> orders = new ArrayList<>();
    private int run;
    private int next;

    RandomDraws(int runs, long seed) {
        this.runs = runs;
        random = new Well19937c(seed);
    }

    /** Goes on with the first number of that run, counted from 0. */
    void begin(int number) {
        run = number;
        next = 0;
    }

    /**
     * A number of the normal distribution.
     *
     * @param deviation standard deviation, from 0
     */
    public double normal(double mean, double deviation) {
        return mean + deviation * new NormalDistribution(null, 0, 1).inverseCumulativeProbability(uniform());
    }

    /** Whether something comes to pass that does so in that share of the cases. */
    public boolean chance(double share) {
        return uniform() < share;
    }

    /** The next number of this run, above 0 and below 1. */
    private double uniform() {
        if (next == orders.size()) {
            orders.add(new RandomDataGenerator(random).nextPermutation(runs, runs));
        }
        int band = orders.get(next)[run];
        next++;
        // A draw of exactly 0 in the lowest band would be minus infinity as a normal number.
        return (band + Math.max(random.nextDouble(), Double.MIN_NORMAL)) / runs;
    }
}
