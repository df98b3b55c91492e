// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.work.AlteredWork;
import spadework.paperwork.work.QuantityChangeRow;

/**
 * Everything a change order prints, finished. It holds prices and no cost.
 *
 * @param plan the house with what is added
 * @param quantities every measured quantity that differs
 * @param lead what is promised about coatings of the added walls that may hold lead, where the agreed work has none;
 *     its pamphlet is receipted (40 CFR 745.84(a))
 * @param subcontractors who works under the contractor, in a sentence; empty where it is not known
 * @param notices that the law of the house wants on a change order too
 */
public record ChangeOrder(
        PaperHead head,
        ChangeSubject subject,
        Scene plan,
        AlteredWork work,
        List<FindingNote> lead,
        List<QuantityChangeRow> quantities,
        ChangePrice price,
        ChangeTime time,
        ChangeDecision decision,
        String subcontractors,
        List<NoticeText> notices) {

    public ChangeOrder {
        lead = List.copyOf(lead);
        quantities = List.copyOf(quantities);
        notices = List.copyOf(notices);
    }
}
