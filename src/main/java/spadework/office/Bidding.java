// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import spadework.contract.Contract;
import spadework.contract.Contracting;
import spadework.contract.PricedChange;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.intake.ReadJob;
import spadework.job.Agreed;
import spadework.job.Job;
import spadework.law.HouseLaw;
import spadework.office.files.Logo;
import spadework.office.files.Photos;
import spadework.office.files.PictureFiles;
import spadework.paperwork.Dossier;
import spadework.paperwork.DossierFindings;
import spadework.paperwork.DossierPhotos;
import spadework.paperwork.contract.ContractChecks;
import spadework.paperwork.part.DryPromises;
import spadework.paperwork.proposal.ProposalChecks;
import spadework.pricebook.PriceBook;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.safety.Checks;
import spadework.safety.Facts;
import spadework.schedule.CrewCalendar;
import spadework.schedule.JobBook;
import spadework.schedule.MeasuredStages;
import spadework.schedule.ScheduleChecks;
import spadework.schedule.ScheduledTakeoff;
import spadework.takeoff.Takeoff;
import spadework.wording.Language;

/** From a job that was read to its bid: takeoff, checks, price, contract. */
public final class Bidding {
    private final OfficeWords words;
    private final PrintedWarranty warranty;
    private final PictureFiles pictures = new PictureFiles();

    Bidding(OfficeWords words, PrintedWarranty warranty) {
        this.words = words;
        this.warranty = warranty;
    }

    BidResult bid(ReadJob understood, BidSource source) {
        Job job = understood.job();
        PictureFiles.Album album = pictures.album();
        // To look at its pictures takes as long as to price a job; neither waits for the other.
        CompletableFuture<List<Fault>> looking = CompletableFuture.supplyAsync(() -> unprintable(understood, album));
        PriceBook book = JobBook.of(understood.book(), understood.company(), job);
        MeasuredStages stages = new MeasuredStages(understood.company(), book);
        ScheduledTakeoff scheduled = stages.of(job);
        Quote quote = Pricing.of(job, understood.company(), book, scheduled.takeoff());
        List<Fault> unpriced = UnitPriceFaults.of(job, quote, source.file());
        if (!unpriced.isEmpty()) {
            return refused(looking, unpriced);
        }
        Bid bid = new Case(understood, stages, source, album, looking).bid(scheduled, quote);
        if (!looking.join().isEmpty()) {
            return refused(looking, unpriced);
        }
        album.keep();
        return bid;
    }

    private static Refusal refused(CompletableFuture<List<Fault>> looking, List<Fault> unpriced) {
        List<Fault> faults = new ArrayList<>(looking.join());
        faults.addAll(unpriced);
        return new Refusal(faults);
    }

    private static List<Fault> unprintable(ReadJob understood, PictureFiles.Album album) {
        List<Fault> faults = new ArrayList<>(Photos.faults(understood.job(), understood.jobFolder(), album));
        Logo.fault(understood.company(), understood.jobFolder(), album).ifPresent(faults::add);
        return faults;
    }

    /** One job on its way. */
    private final class Case {
        private final ReadJob understood;
        private final MeasuredStages stages;
        private final PriceBook book;
        private final BidSource source;
        private final PictureFiles.Album album;
        private final CompletableFuture<List<Fault>> looking;

        private Case(
                ReadJob understood,
                MeasuredStages stages,
                BidSource source,
                PictureFiles.Album album,
                CompletableFuture<List<Fault>> looking) {
            this.understood = understood;
            this.stages = stages;
            this.book = stages.book();
            this.source = source;
            this.album = album;
            this.looking = looking;
        }

        private Bid bid(ScheduledTakeoff scheduled, Quote quote) {
            Job job = understood.job();
            Contract contract =
                    Contracting.of(job, stages, quote, source.record().sealed());
            Dossier proposed = dossier(job, scheduled, contract);
            Dossier contracted = dossier(Agreed.contracted(job), contract, proposed);
            Dossier agreed = dossier(Agreed.of(job), contract, contracted);
            return new Bid(proposed, contracted, agreed, quote, quote(agreed, quote));
        }

        /** The agreed work priced; the quote of the proposed work where nothing differs. */
        private Quote quote(Dossier agreed, Quote proposed) {
            return agreed.job().equals(understood.job())
                    ? proposed
                    : Pricing.of(agreed.job(), understood.company(), book, agreed.takeoff());
        }

        /** The dossier of the job in a later state; the one before it where nothing differs. */
        private Dossier dossier(Job job, Contract contract, Dossier before) {
            return job.equals(before.job()) ? before : dossier(job, stages.of(job), contract);
        }

        private Dossier dossier(Job job, ScheduledTakeoff scheduled, Contract contract) {
            Takeoff takeoff = scheduled.takeoff();
            PaidFindings found =
                    PaidFindings.of(Checks.of(new Facts(job, book, takeoff)), job, understood.company(), book, takeoff);
            return new Dossier(
                    job,
                    understood.company(),
                    book,
                    takeoff,
                    contract,
                    law(job),
                    source.revision(),
                    new DossierFindings(found.findings(), contractFindings(job, scheduled.calendar(), contract, found)),
                    words.in(Language.ENGLISH).phrases(),
                    words.in(Language.ENGLISH).terms(),
                    words.in(job.head().language(), understood.company()),
                    photos(job));
        }

        /** Waits until they have been looked at; a job with one that cannot be printed gets no bid. */
        private DossierPhotos photos(Job job) {
            return looking.join().isEmpty()
                    ? new DossierPhotos(
                            Logo.of(understood.company(), understood.jobFolder(), album),
                            Photos.of(job, understood.jobFolder(), album),
                            Photos.ofWork(job, understood.jobFolder(), album))
                    : DossierPhotos.NONE;
        }

        private HouseLaw law(Job job) {
            return understood.states().at(job.site().address().state());
        }

        private List<Finding> contractFindings(Job job, CrewCalendar calendar, Contract contract, PaidFindings paid) {
            List<Finding> found = new ArrayList<>(source.record().findings());
            found.addAll(source.record().differences(this.understood.job()));
            paid.open().ifPresent(found::add);
            found.addAll(paid.twice());
            found.addAll(ContractChecks.of(job, understood.company(), contract, law(job)));
            found.addAll(Letters.of(job, understood.company()));
            found.addAll(ProposalChecks.of(job, understood.company()));
            found.addAll(HomeownerPapers.inEnglish(job));
            found.addAll(UntranslatedTexts.of(job, understood.company()));
            found.addAll(warranty.findings(job, understood.company()));
            found.addAll(DryPromises.of(job, book));
            found.addAll(ScheduleChecks.of(job, understood.company(), calendar));
            contract.accepted().stream()
                    .filter(change -> !change.agreed().equals(change.figured()))
                    .map(Bidding::differs)
                    .forEach(found::add);
            return found;
        }
    }

    private static Finding differs(PricedChange change) {
        return new Finding(
                "change-price-differs",
                Severity.ADVISE,
                Integer.toString(change.change().number()),
                Map.of(
                        "signed",
                        change.agreed().total().text(),
                        "figured",
                        change.figured().total().text()),
                "common practice, no source");
    }
}
