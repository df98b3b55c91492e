package spadework.figure;

import java.math.BigDecimal;
import spadework.measure.Unit;
import spadework.working.Working;

/**
 * One figure of an answer.
 *
 * @param name what it is, in words
 * @param value unrounded
 */
public record Value(String name, BigDecimal value, Unit unit) {

    /** A worked number as a figure of the answer. */
    public static Value of(Working working) {
        return new Value(working.name(), working.value(), working.unit());
    }
}
