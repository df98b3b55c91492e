// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaymentRow;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.part.WorkConditions;
import spadework.paperwork.part.WorkSchedule;

/**
 * Everything the proposal prints, finished. It holds prices and no cost.
 *
 * @param conditions what the price includes, rests on and asks for
 * @param notes the findings that concern the homeowner
 * @param offer its options, and which issue it is
 * @param answer what a yes does, and what else could be done
 */
public record Proposal(
        PaperHead head,
        Scene plan,
        ProposalFound found,
        ProposalWork work,
        ProposalPrice price,
        WorkConditions conditions,
        WorkSchedule schedule,
        List<PaymentRow> payments,
        WarrantyPromise warranty,
        List<FindingNote> notes,
        Offer offer,
        ProposalAnswer answer) {

    public Proposal {
        payments = List.copyOf(payments);
        notes = List.copyOf(notes);
    }
}
