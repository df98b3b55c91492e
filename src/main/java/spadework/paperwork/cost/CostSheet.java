// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.List;
import java.util.Optional;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaymentRow;
import spadework.paperwork.work.MeasuredRow;

/**
 * Everything the cost sheet prints, for the contractor only.
 *
 * @param agreed what was agreed beside its cost; empty until the job is accepted
 * @param unpriced work that findings ask for and no line pays for; empty where each has its line
 */
public record CostSheet(
        PaperHead head,
        CostBook book,
        List<CostSheetLine> lines,
        List<CostSheetSection> sections,
        CostBuildUp buildUp,
        CostPrice price,
        List<PaymentRow> payments,
        CostSupplies supplies,
        List<MeasuredRow> quantities,
        CostNotes notes,
        Optional<AgreedMargin> agreed,
        Optional<UnpricedWork> unpriced) {

    public CostSheet {
        lines = List.copyOf(lines);
        sections = List.copyOf(sections);
        payments = List.copyOf(payments);
        quantities = List.copyOf(quantities);
    }
}
