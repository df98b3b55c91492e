// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.math.BigDecimal;
import spadework.measure.Unit;

/**
 * A number of an answer.
 *
 * @param value unrounded
 */
public record Figure(String name, BigDecimal value, Unit unit) implements AnswerValue {}
