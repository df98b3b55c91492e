// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Random numbers of one seed: the same seed draws the same numbers in the same order. */
public final class RandomDraws {
    private final RandomGenerator random;

    RandomDraws(long seed) {
        random = new Well19937c(seed);
    }

    /**
     * A number of the normal distribution.
     *
     * @param deviation standard deviation, from 0
     */
    public double normal(double mean, double deviation) {
        double unit = new NormalDistribution(random, 0, 1).sample();
        return mean + deviation * unit;
    }

    /** Whether something comes to pass that does so in that share of the cases. */
    public boolean chance(double share) {
        return random.nextDouble() < share;
    }
}
