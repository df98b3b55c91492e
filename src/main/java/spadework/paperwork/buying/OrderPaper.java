// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.buying;

import java.time.LocalDate;
import spadework.buying.Delivery;
import spadework.buying.OrderLine;
import spadework.buying.PurchaseOrder;
import spadework.paperwork.Dossier;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.Firm;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaperHeads;
import spadework.trench.TrenchLimits;
import spadework.wording.Wording;

/** Puts a purchase order together. */
public final class OrderPaper {
    private static final Wording WORDS = Wording.beside(OrderPaper.class);

    private OrderPaper() {}

    /**
     * A purchase order.
     *
     * @param count which of the job's orders, from 1
     * @param on the day that it carries
     */
    public static OrderSheet of(Dossier dossier, PurchaseOrder order, int count, LocalDate on) {
        PaperHead head = PaperHeads.of(dossier, on);
        OrderNotes notes = new OrderNotes(dossier, order);
        String book = dossier.book().title() + ", "
                + PrintedDates.words(dossier.book().dated());
        return new OrderSheet(
                head,
                order.supplier(),
                count,
                caller(head.firm()),
                order.deliveries().stream().map(OrderPaper::day).toList(),
                order.total(),
                notes.sizes(),
                notes.open(),
                WORDS.get("order.conditions", book, TrenchLimits.SPOIL_BACK.text()));
    }

    private static String caller(Firm firm) {
        return firm.callName().isEmpty()
                ? firm.callPhone()
                : WORDS.get("order.caller", firm.callName(), firm.callPhone());
    }

    private static OrderSheet.Day day(Delivery delivery) {
        return new OrderSheet.Day(
                PrintedDates.words(delivery.on()),
                PrintedDates.words(delivery.orderBy()),
                delivery.lines().stream().map(OrderPaper::row).toList());
    }

    private static OrderSheet.Row row(OrderLine line) {
        return new OrderSheet.Row(
                line.code(),
                line.number(),
                line.name(),
                line.packages().stripTrailingZeros().toPlainString(),
                line.sold(),
                line.price(),
                line.amount(),
                line.onSite()
                        .map(count -> count.stripTrailingZeros().toPlainString())
                        .orElse(""));
    }
}
