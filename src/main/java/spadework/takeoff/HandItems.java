// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import spadework.company.WorkCondition;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;

/** Where only hand tools reach a wall, soil and stone are moved by items that need no machine, if the book has any. */
public final class HandItems {
    private static final Set<Measure> MOVED = EnumSet.of(Measure.STONE, Measure.BACKFILL);

    private HandItems() {}

    /** The items for a quantity: the book's usual ones, or those by hand in their place. */
    static List<LineItem> inPlaceOf(List<LineItem> usual, Driven driven, PriceBook book) {
        Measure measure = driven.quantity().measure();
        boolean byHand = isNarrow(driven) && MOVED.contains(measure);
        if (!byHand || usual.stream().noneMatch(HandItems::needsMachine)) {
            return usual;
        }
        List<LineItem> hand = of(measure, book);
        return hand.isEmpty() ? usual : hand.subList(0, 1);
    }

    /** No machine gets to any part of it. */
    private static boolean isNarrow(Driven driven) {
        return !driven.stretches().isEmpty()
                && driven.stretches().stream()
                        .allMatch(stretch -> stretch.conditions().contains(WorkCondition.NARROW));
    }

    /** Items that follow a measure and need no machine, by code. */
    public static List<LineItem> of(Measure measure, PriceBook book) {
        return book.items().values().stream()
                .filter(item -> item.follows().filter(measure::equals).isPresent())
                .filter(item -> item.labor().isPresent() && !needsMachine(item))
                .sorted(Comparator.comparing(LineItem::code))
                .toList();
    }

    /** Measures of a wall for which the book has only items that need a machine. */
    public static List<Measure> missing(PriceBook book) {
        return MOVED.stream()
                .filter(measure -> book.standardFor(measure).stream().anyMatch(HandItems::needsMachine))
                .filter(measure -> of(measure, book).isEmpty())
                .toList();
    }

    private static boolean needsMachine(LineItem item) {
        return item.labor().filter(labor -> labor.machine().isPresent()).isPresent();
    }
}
