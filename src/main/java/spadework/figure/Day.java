// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.time.LocalDate;
import spadework.measure.Unit;

/** A day of an answer. */
public record Day(String name, LocalDate date) implements AnswerValue {

    @Override
    public Unit unit() {
        return Unit.NONE;
    }
}
