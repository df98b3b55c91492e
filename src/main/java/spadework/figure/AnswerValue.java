// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.time.LocalDate;
import java.util.Optional;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.working.Working;

/** One answer: a number with its unit, an amount of money, or a day. */
public sealed interface AnswerValue permits Figure, Amount, Day {

    /** What it is, in words. */
    String name();

    /** The unit behind it; {@link Unit#NONE} for a day. */
    Unit unit();

    /** A worked number as a figure of the answer. */
    static AnswerValue of(Working working) {
        return new Figure(working.name(), working.value(), working.unit());
    }

    /** Money. */
    static AnswerValue of(String name, Dollars amount) {
        return new Amount(name, Optional.of(amount));
    }

    /** A day of the calendar. */
    static AnswerValue of(String name, LocalDate day) {
        return new Day(name, day);
    }
}
