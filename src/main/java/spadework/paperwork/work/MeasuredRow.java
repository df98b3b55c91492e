// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.math.BigDecimal;

/**
 * A quantity as printed.
 *
 * @param value rounded to the unit's decimals
 * @param text the same with thousands marked and its unit
 * @param working formula, figures and result on one line
 * @param inputs each input with its unit and where it comes from, on one line
 * @param source of the formula
 */
public record MeasuredRow(
        String id,
        String section,
        String description,
        BigDecimal value,
        String unit,
        String text,
        String working,
        String inputs,
        String source) {}
