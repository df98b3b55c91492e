// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.part.WorkConditions;
import spadework.paperwork.part.WorkSchedule;

/**
 * Everything the contract prints, finished. It holds prices and no cost.
 *
 * @param missing what is missing that the law prescribes; while anything is, it is a draft that nobody signs
 */
public record ContractSheet(
        PaperHead head,
        List<FindingNote> missing,
        Scene plan,
        ContractParties parties,
        ContractWork work,
        ContractPrice price,
        ContractDeposit deposit,
        WorkSchedule schedule,
        WorkConditions conditions,
        ContractLaw law,
        WarrantyPromise warranty) {

    public ContractSheet {
        missing = List.copyOf(missing);
    }

    /** Whether something is missing, so that nobody signs it. */
    public boolean draft() {
        return !missing.isEmpty();
    }
}
