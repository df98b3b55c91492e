// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.util.List;
import spadework.money.Dollars;

/**
 * A bill that is not paid in full.
 *
 * @param due the day from which it is due, in words
 * @param days that have gone by since
 * @param rest what is still to be paid of it
 */
public record LateRow(String number, String due, long days, List<BillRow> rows, Dollars rest) {

    public LateRow {
        rows = List.copyOf(rows);
    }
}
