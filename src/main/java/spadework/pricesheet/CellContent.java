// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.math.BigDecimal;

/** What a cell holds. */
public sealed interface CellContent {
    /** Nothing, or only spaces. */
    record Empty() implements CellContent {}

    record Words(String text) implements CellContent {}

    record Figure(BigDecimal value) implements CellContent {}

    /** A formula, an error value, true or false: nothing that a price book takes. */
    record Odd(String what) implements CellContent {}

    /** An empty cell. */
    static CellContent empty() {
        return new Empty();
    }

    /** Words, or nothing where there are none. */
    static CellContent words(String text) {
        return text.isBlank() ? empty() : new Words(text.strip());
    }

    /** Whether a reader sees the same. */
    default boolean isSame(CellContent other) {
        return (this instanceof Figure one && other instanceof Figure two)
                ? one.value().compareTo(two.value()) == 0
                : equals(other);
    }

    /** As a message shows it. */
    default String shown() {
        return this instanceof Words words
                ? "\"" + words.text() + "\""
                : this instanceof Figure number
                        ? number.value().toPlainString()
                        : this instanceof Odd odd ? odd.what() : "an empty cell";
    }
}
