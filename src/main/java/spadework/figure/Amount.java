// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Optional;
import spadework.measure.Unit;
import spadework.money.Dollars;

/**
 * Money of an answer.
 *
 * @param dollars to the cent; empty where no limit was found
 */
public record Amount(String name, Optional<Dollars> dollars) implements AnswerValue {

    @Override
    public Unit unit() {
        return Unit.DOLLAR;
    }
}
