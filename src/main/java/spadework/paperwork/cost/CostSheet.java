// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.money.Dollars;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaymentRow;
import spadework.paperwork.work.MeasuredRow;

/**
 * Everything the cost sheet prints, for the contractor only.
 *
 * @param directTotal sum of the direct costs
 * @param agreed what was agreed beside its cost; empty until the job is accepted
 * @param margin share of the price that is left after cost, contingency and overhead, as {@code 12.1%}
 */
public record CostSheet(
        PaperHead head,
        String bookTitle,
        String bookDate,
        List<CostSheetLine> lines,
        List<CostSheetSection> sections,
        Dollars directTotal,
        List<PriceStep> buildUp,
        BigDecimal contingency,
        BigDecimal overhead,
        BigDecimal profit,
        boolean profitIsMargin,
        BigDecimal step,
        Dollars minimumTopUp,
        Dollars price,
        Dollars tax,
        Dollars total,
        String margin,
        List<PaymentRow> payments,
        List<PurchaseRow> purchases,
        List<CrewRow> crews,
        List<MeasuredRow> quantities,
        List<FindingNote> notes,
        List<String> internalNotes,
        Optional<AgreedMargin> agreed) {}
