// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What comes of many runs with random numbers, in order. A quantile is one of the outcomes, by nearest rank, and none
 * is made up between two.
 */
public record Simulation<T extends Comparable<T>>(List<T> outcomes) {

    public Simulation {
        outcomes = outcomes.stream().sorted().toList();
    }

    /** Runs; the same seed gives the same outcomes. */
    public static <T extends Comparable<T>> Simulation<T> of(int runs, long seed, Function<RandomDraws, T> run) {
        RandomDraws draws = new RandomDraws(runs, seed);
        List<T> outcomes = new ArrayList<>(runs);
        for (int i = 0; i < runs; i++) {
            draws.begin(i);
            outcomes.add(run.apply(draws));
        }
        return new Simulation<>(outcomes);
    }

    /**
     * The least outcome that so large a share of all outcomes does not exceed.
     *
     * @param share above 0, at most 1
     */
    public T quantile(double share) {
        int rank = (int) Math.ceil(share * outcomes.size());
        return outcomes.get(Math.max(1, Math.min(rank, outcomes.size())) - 1);
    }

    /** The share of outcomes above a value. */
    public double above(T value) {
        return (double) outcomes.stream()
                        .filter(one -> one.compareTo(value) > 0)
                        .count()
                / outcomes.size();
    }
}
