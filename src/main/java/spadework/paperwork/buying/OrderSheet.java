// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.buying;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;

/**
 * Everything that a purchase order prints, finished. Days are in words. It is for a supplier and shows what material
 * costs, so no homeowner gets it.
 *
 * @param supplier blank for what nobody said where to buy
 * @param count which of the job's orders, from 1
 * @param book title of the price book with its date
 */
public record OrderSheet(PaperHead head, String supplier, int count, String book, List<Day> days, Dollars total) {

    public OrderSheet {
        days = List.copyOf(days);
    }

    /**
     * What comes on one day.
     *
     * @param orderBy the last day to order it
     */
    public record Day(String on, String orderBy, List<Row> rows) {

        public Day {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A line.
     *
     * @param number the supplier's own; blank where there is none
     * @param packages whole ones, without trailing zeros
     * @param onSite how many are used, where the others come from our yard; else empty
     */
    public record Row(
            String code,
            String number,
            String name,
            String packages,
            String sold,
            Dollars price,
            Dollars amount,
            String onSite) {}
}
