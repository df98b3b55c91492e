// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.stream.Stream;
import spadework.company.Company;
import spadework.company.TaxMode;
import spadework.drawing.shape.Scene;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.PaymentRows;
import spadework.paperwork.part.PriceRows;
import spadework.paperwork.part.WarrantyPromises;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWorks;
import spadework.pricing.OfferedPrice;

/** Puts the proposal together. */
public final class ProposalPaper {
    private ProposalPaper() {}

    public static Proposal of(Dossier dossier, Scene plan) {
        Job job = dossier.job();
        Company company = dossier.company();
        OfferedPrice offered = dossier.contract().proposed();
        PipeWorks runs = new PipeWorks(dossier);
        return new Proposal(
                PaperHeads.of(dossier),
                plan,
                job.observations(),
                job.notFixed(),
                new WallWorks(dossier).all(),
                runs.all(),
                runs.outlets(),
                PriceRows.prices(dossier, offered),
                offered.price(),
                offered.tax(),
                company.tax().mode() == TaxMode.ON_PRICE ? company.tax().rate().text() : "",
                offered.total(),
                offered.bookTitle() + ", " + PrintedDates.words(offered.bookDate()),
                PriceRows.unitPrices(dossier, offered),
                PriceRows.included(dossier),
                Stream.concat(company.excluded().stream(), job.excluded().stream())
                        .distinct()
                        .toList(),
                job.assumed(),
                job.protection(),
                PrintedDates.words(job.schedule().earliestStart()),
                PrintedDates.words(job.schedule().latestFinish()),
                job.schedule().workingDays(),
                job.schedule().note(),
                PaymentRows.of(offered.payments()),
                WarrantyPromises.specimen(job),
                company.preparation(),
                FindingNotes.forHomeowner(dossier),
                Stream.concat(company.terms().stream(), job.terms().stream()).toList(),
                dossier.photos().visit(),
                Offers.of(dossier));
    }
}
