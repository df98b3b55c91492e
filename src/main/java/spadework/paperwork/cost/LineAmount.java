// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;

/** How much of a line. {@code text} has its unit and thousands marked. */
public record LineAmount(BigDecimal quantity, String unit, String text) {}
