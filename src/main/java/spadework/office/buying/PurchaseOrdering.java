// SPDX-License-Identifier: Apache-2.0
package spadework.office.buying;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import spadework.buying.PurchaseOrder;
import spadework.buying.PurchaseOrders;
import spadework.job.Agreed;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.Refusal;
import spadework.office.files.PaperFolder;
import spadework.paperwork.Dossier;
import spadework.paperwork.buying.OrderPaper;
import spadework.register.IssuedFolders;
import spadework.schedule.CrewCalendar;

/** Prints what a job buys: an order for each supplier, to the folder that stays with the contractor. */
public final class PurchaseOrdering {
    private static final String TEMPLATE = "purchase-order";

    private final Office office;

    public PurchaseOrdering(Office office) {
        this.office = office;
    }

    /**
     * Prints the purchase orders of a job, of the day since which its work is agreed.
     *
     * @param out the folder into which the job's papers go
     * @throws IOException if a file cannot be read or written
     */
    public Outcome orders(Path job, Path out) throws IOException {
        return orders(job, bid -> Agreed.on(bid.dossier().job()), out);
    }

    /**
     * The same of another day.
     *
     * @param on the day that they carry
     * @throws IOException if a file cannot be read or written
     */
    public Outcome orders(Path job, LocalDate on, Path out) throws IOException {
        return orders(job, bid -> on, out);
    }

    private Outcome orders(Path job, Function<Bid, LocalDate> day, Path out) throws IOException {
        BidResult answer = office.bid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        if (!bid.openStops().isEmpty()) {
            return new Outcome.Stopped(
                    bid.openStops().stream().map(office::described).toList());
        }
        Map<String, byte[]> files = files(bid, day.apply(bid));
        return new Outcome.Printed(PaperFolder.write(out, bid.dossier().job().number(), IssuedFolders.KEPT, files));
    }

    /** All are made before the first is written. */
    private Map<String, byte[]> files(Bid bid, LocalDate on) {
        Dossier dossier = bid.dossier();
        CrewCalendar calendar = CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
        List<PurchaseOrder> orders = PurchaseOrders.of(dossier.book(), dossier.takeoff(), calendar);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int i = 0; i < orders.size(); i++) {
            int count = i + 1;
            Map<String, Object> model = Map.of("order", OrderPaper.of(dossier, orders.get(i), count, on));
            office.printedApart(bid, TEMPLATE, model, on)
                    .forEach((name, bytes) -> files.put(name.replace(TEMPLATE, TEMPLATE + "-" + count), bytes));
        }
        return files;
    }
}
