package spadework.pricesheet;

import java.math.BigDecimal;

/** What a cell holds. */
public sealed interface Content {
    /** Nothing, or only spaces. */
    record Empty() implements Content {}

    record Words(String text) implements Content {}

    record Figure(BigDecimal value) implements Content {}

    /** A formula, an error value, true or false: nothing that a price book takes. */
    record Odd(String what) implements Content {}

    /** An empty cell. */
    static Content empty() {
        return new Empty();
    }

    /** Words, or nothing where there are none. */
    static Content words(String text) {
        return text.isBlank() ? empty() : new Words(text.strip());
    }

    /** Whether a reader sees the same. */
    default boolean isSame(Content other) {
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
