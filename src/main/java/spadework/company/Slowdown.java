// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.math.BigDecimal;

/**
 * How much longer work takes under a condition.
 *
 * @param condition one of the conditions that the takeoff recognises
 * @param factor hours are multiplied by it; at least 1
 */
public record Slowdown(WorkCondition condition, BigDecimal factor, String source) {}
