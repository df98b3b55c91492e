// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The values that make sense.
 *
 * @param words the limits in words, as "above 0 ft and at most 1000 ft"
 */
public record Limits<T>(String words, Predicate<T> hold) {

    boolean allow(T value) {
        return hold.test(value);
    }

    /** From the one to the other, both allowed. */
    public static <T extends Comparable<T>> Limits<T> between(T least, T most, Function<T, String> text) {
        return new Limits<>(
                "from " + text.apply(least) + " to " + text.apply(most),
                value -> value.compareTo(least) >= 0 && value.compareTo(most) <= 0);
    }

    /** More than the one, at most the other. */
    public static <T extends Comparable<T>> Limits<T> above(T least, T most, Function<T, String> text) {
        return new Limits<>(
                "above " + text.apply(least) + ", at most " + text.apply(most),
                value -> value.compareTo(least) > 0 && value.compareTo(most) <= 0);
    }

    /** From the one, to less than the other. */
    static <T extends Comparable<T>> Limits<T> under(T least, T bound, Function<T, String> text) {
        return new Limits<>(
                "from " + text.apply(least) + " to under " + text.apply(bound),
                value -> value.compareTo(least) >= 0 && value.compareTo(bound) < 0);
    }
}
