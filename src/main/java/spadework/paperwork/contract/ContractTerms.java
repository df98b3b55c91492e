package spadework.paperwork.contract;

import spadework.drawing.shape.Scene;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.WarrantyPromise;
import spadework.paperwork.part.WorkConditions;
import spadework.paperwork.part.WorkSchedule;

/**
 * Everything the contract prints, finished. It holds prices and no cost.
 *
 * @param draft true while something is missing that the law prescribes, so that nobody signs it
 */
public record ContractTerms(
        PaperHead head,
        boolean draft,
        Scene plan,
        ContractParties parties,
        ContractWork work,
        ContractPrice price,
        ContractDeposit deposit,
        WorkSchedule schedule,
        WorkConditions conditions,
        ContractLaw law,
        WarrantyPromise warranty) {}
