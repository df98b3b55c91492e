// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import java.util.Set;
import spadework.company.Company;
import spadework.company.TaxMode;
import spadework.drawing.shape.Scene;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.PaymentRows;
import spadework.paperwork.part.PriceRows;
import spadework.paperwork.part.WarrantyPromises;
import spadework.paperwork.part.WorkConditions;
import spadework.paperwork.part.WorkSchedule;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWorks;
import spadework.pricing.OfferedPrice;

/** Puts the proposal together. */
public final class ProposalPaper {
    /** What the days, the preparation, the next steps and the warranty say already. */
    private static final Set<String> TOLD_ELSEWHERE =
            Set.of("spoil-back", "private-lines", "locate-keep", "never-sanitary");

    private ProposalPaper() {}

    public static Proposal of(Dossier dossier, Scene plan) {
        Job job = dossier.job();
        OfferedPrice offered = dossier.contract().proposed();
        PipeWorks pipes = new PipeWorks(dossier);
        return new Proposal(
                PaperHeads.of(dossier),
                plan,
                new ProposalFound(
                        job.observations(), job.notFixed(), dossier.photos().visit()),
                new ProposalWork(
                        new WallWorks(dossier).all(), pipes.all(), pipes.outlets(), ProposalAnswers.engineer(dossier)),
                price(dossier, offered),
                WorkConditions.of(dossier),
                WorkSchedule.of(dossier.terms(), job),
                PaymentRows.of(dossier.terms(), offered.payments()),
                WarrantyPromises.specimen(dossier, job),
                notes(dossier),
                Offers.of(dossier),
                ProposalAnswers.of(dossier));
    }

    /** The findings that concern the homeowner, without those of which another part of the proposal tells. */
    private static List<FindingNote> notes(Dossier dossier) {
        return FindingNotes.forHomeowner(dossier).stream()
                .filter(note -> !TOLD_ELSEWHERE.contains(note.id()))
                .toList();
    }

    private static ProposalPrice price(Dossier dossier, OfferedPrice offered) {
        Company company = dossier.company();
        return new ProposalPrice(
                PriceRows.prices(dossier, offered),
                offered.price(),
                offered.tax(),
                company.tax().mode() == TaxMode.ON_PRICE ? company.tax().rate().text() : "",
                offered.total(),
                offered.bookTitle() + ", " + dossier.terms().day(offered.bookDate()),
                PriceRows.unitPrices(dossier, offered));
    }
}
