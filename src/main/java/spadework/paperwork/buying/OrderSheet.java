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
 * @param caller whom the supplier calls
 * @param sizes of what a line names without its size, one a sentence
 * @param open parts that the work takes and no line has, one a sentence
 * @param conditions of every order
 */
public record OrderSheet(
        PaperHead head,
        String supplier,
        int count,
        String caller,
        List<Day> days,
        Dollars total,
        List<String> sizes,
        List<String> open,
        String conditions) {

    public OrderSheet {
        days = List.copyOf(days);
        sizes = List.copyOf(sizes);
        open = List.copyOf(open);
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
