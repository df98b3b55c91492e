// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.job.Observation;
import spadework.money.Dollars;
import spadework.paperwork.Picture;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaymentRow;
import spadework.paperwork.part.PriceRow;
import spadework.paperwork.part.UnitPriceRow;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.work.OutletWork;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.WallWork;

/**
 * Everything the proposal prints, finished. It holds prices and no cost.
 *
 * @param notes the findings that concern the homeowner
 * @param pictures photos of the visit
 * @param offer its options, and which issue it is
 * @param tax zero when no tax line is printed
 */
public record Proposal(
        PaperHead head,
        Scene plan,
        List<Observation> observations,
        List<String> notFixed,
        List<WallWork> walls,
        List<PipeWork> runs,
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
        WarrantyPromise warranty,
        List<String> preparation,
        List<FindingNote> notes,
        List<String> terms,
        List<Picture> pictures,
        Offer offer) {}
