package spadework.paperwork.contract;

import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.Scene;
import spadework.job.Subcontractor;
import spadework.money.Dollars;
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
 * Everything the contract prints, finished. It holds prices and no cost.
 *
 * @param draft true while something is wanting that the law prescribes, so that nobody signs it
 * @param signedOn date of the transaction in words; empty where it is filled in by hand
 * @param licenseMore class of the license and its last day, where the company file says so
 * @param salesperson who sold the work, with the number; empty where unknown
 * @param walls the walls of the work as contracted, with options that were taken
 * @param before findings that have to be answered before work may start, in the homeowner's words
 * @param prices the work without options
 * @param proposedTax sales tax on it, zero unless the company collects it; the price of an option holds its own
 * @param total what the homeowner pays: proposal and options taken, with any tax
 * @param deposits numbers of the payments that are due at signing
 * @param deposit what they come to
 * @param essential whether the completion date is of the essence; empty where the parties have not said
 * @param subcontractors empty where it is unknown whether there are any
 */
public record ContractTerms(
        PaperHead head,
        boolean draft,
        String signedOn,
        String buyerAddress,
        LicenseMore licenseMore,
        String salesperson,
        Scene plan,
        List<WallWork> walls,
        List<PipeWork> runs,
        List<OutletWork> outlets,
        List<FindingNote> before,
        List<OptionRow> options,
        boolean accepted,
        List<PriceRow> prices,
        Dollars proposedTax,
        Dollars total,
        List<UnitPriceRow> unitPrices,
        List<PaymentRow> payments,
        List<Integer> deposits,
        Dollars deposit,
        Optional<Dollars> specialOrder,
        String depositHeld,
        String startFrom,
        String finishBy,
        int workingDays,
        String scheduleNote,
        Optional<Boolean> essential,
        List<String> included,
        List<String> excluded,
        List<String> assumed,
        List<String> protection,
        List<String> preparation,
        String permits,
        Optional<List<Subcontractor>> subcontractors,
        boolean lienOnHome,
        boolean financed,
        WarrantyPromise warranty,
        List<String> terms,
        List<NoticeText> notices,
        CancelTerms cancel,
        boolean emergency) {

    /** What company.json says of the contractor beyond license number and liability cover; empty where it is silent. */
    public record LicenseMore(
            String classification,
            String until,
            String taxId,
            String bond,
            String insurerPhone,
            String workers,
            Optional<List<String>> affiliates) {}

    /** The notices of one place, as {@code first page}. */
    public List<NoticeText> noticesAt(String place) {
        return notices.stream().filter(notice -> notice.place().equals(place)).toList();
    }
}
