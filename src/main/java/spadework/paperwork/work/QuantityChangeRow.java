// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.math.BigDecimal;

/**
 * A measured quantity that differs, as printed.
 *
 * @param what in the homeowner's words where there are some, else by its trade name
 * @param plain whether a homeowner's list shows it
 * @param label the wall or pipe that it is measured at; empty for the whole job
 * @param difference how much more or less, with its sign
 * @param sample a figure with the decimals of its unit, for a cell to copy
 */
public record QuantityChangeRow(
        String what,
        boolean plain,
        String label,
        String unit,
        BigDecimal before,
        BigDecimal after,
        String beforeText,
        String afterText,
        String difference,
        String sample) {}
