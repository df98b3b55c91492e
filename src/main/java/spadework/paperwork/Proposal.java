package spadework.paperwork;

import java.util.List;
import spadework.drawing.Scene;
import spadework.job.Observation;
import spadework.money.Dollars;

/**
 * Everything the proposal prints, finished. It holds prices and no cost.
 *
 * @param notes the findings that concern the homeowner
 * @param pictures photos of the visit
 * @param offer its options, and which issue it is
 * @param tax zero when no tax line is printed
 */
public record Proposal(
        Head head,
        Scene plan,
        List<Observation> observations,
        List<String> notFixed,
        List<WallWork> walls,
        List<Run> runs,
        List<OutletWork> outlets,
        List<PriceRow> prices,
        Dollars price,
        Dollars tax,
        String taxRate,
        Dollars total,
        String priceListing,
        List<UnitPriceRow> unitPrices,
        List<String> included,
        List<String> excluded,
        List<String> assumed,
        List<String> protection,
        String startFrom,
        String finishBy,
        int workingDays,
        String scheduleNote,
        List<PaymentRow> payments,
        Promise warranty,
        List<String> preparation,
        List<Note> notes,
        List<String> terms,
        List<Picture> pictures,
        Offer offer) {}
