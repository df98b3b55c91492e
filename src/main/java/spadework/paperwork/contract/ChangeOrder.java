package spadework.paperwork.contract;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.money.Dollars;
import spadework.paperwork.Picture;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.work.AlteredWork;
import spadework.paperwork.work.QuantityChangeRow;

/**
 * Everything a change order prints, finished. It holds prices and no cost.
 *
 * @param contractDate the day on which the contract was accepted, in words; empty before
 * @param reason of the list of reasons, in words
 * @param plan the house with what is added
 * @param quantities every measured quantity that differs
 * @param lines what is charged by unit prices; empty when the work is priced as the contract was
 * @param rest what no unit price covers, priced as the contract was; zero without lines
 * @param otherwise what both sides signed beyond the lines and the rest, or less; zero where they are what was signed
 * @param byPath what the same work comes to priced as the contract was, where that is another figure; else empty
 * @param price before tax; below zero for a credit
 * @param amount the total without a sign
 * @param before contract price before it, with tax
 * @param after contract price once it is accepted
 * @param days working days that it adds; below zero when it takes some away
 * @param finishBefore the finish date before it, in words
 * @param finishAfter the finish date with it; empty where it is not reckoned
 * @param state {@code pending}, {@code accepted} or {@code declined}
 * @param decidedBy who decided for the homeowner
 * @param decidedOn when, in words
 * @param subcontractors who works under the contractor, in a sentence; empty where it is not known
 * @param typed the name that was typed as a signature; empty where it was signed on paper
 */
public record ChangeOrder(
        PaperHead head,
        String contractDate,
        int number,
        String title,
        String reason,
        String why,
        String evidence,
        List<Picture> pictures,
        Scene plan,
        AlteredWork work,
        List<QuantityChangeRow> quantities,
        List<UnitLineRow> lines,
        Dollars rest,
        Dollars otherwise,
        String byPath,
        Dollars price,
        Dollars tax,
        String taxRate,
        Dollars total,
        Dollars amount,
        Dollars before,
        Dollars after,
        int days,
        String finishBefore,
        String finishAfter,
        String state,
        List<String> decidedBy,
        String decidedOn,
        String typed,
        String subcontractors) {

    public ChangeOrder {
        pictures = List.copyOf(pictures);
        quantities = List.copyOf(quantities);
        lines = List.copyOf(lines);
        decidedBy = List.copyOf(decidedBy);
    }

    /** Whether it lowers the price. */
    public boolean isCredit() {
        return total.isNegative();
    }
}
