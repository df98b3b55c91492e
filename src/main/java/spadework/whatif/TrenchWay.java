// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Ways to dig a trench that keep people in it safe. */
public enum TrenchWay {
    SLOPE,
    BENCH,
    SHIELD,
    HAND;

    /** As it is typed. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The way with that word, if there is one. */
    public static Optional<TrenchWay> find(String word) {
        return Arrays.stream(values())
                .filter(way -> way.word().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
