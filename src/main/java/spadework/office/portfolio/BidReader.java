// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import spadework.bids.BidStatus;
import spadework.bids.BidWithStatus;
import spadework.contract.Contract;
import spadework.contract.Contracting;
import spadework.contract.Sum;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.intake.Reading;
import spadework.intake.Refused;
import spadework.job.AfterAcceptance;
import spadework.job.Agreed;
import spadework.job.Job;
import spadework.office.Office;
import spadework.office.UnitPriceFaults;
import spadework.office.records.JobRecords;
import spadework.office.records.JobSource;
import spadework.pricebook.PriceBook;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.reason.Reason;
import spadework.register.Entry;
import spadework.schedule.JobBook;
import spadework.schedule.MeasuredStages;
import spadework.takeoff.Takeoff;

/**
 * Reads bids by the thousand: measured and priced as {@link Office#bid} does, a signed one by what was signed, but
 * neither checked nor drawn. Books are read once. It may be used by several threads.
 */
public final class BidReader {
    private final Intake intake = new Intake();

    /** What came of reading one bid. */
    public record ReadBid<T>(Path file, Optional<T> drawn, List<Fault> faults) {}

    /** Reads a bid and keeps only what is drawn from it. */
    <T> ReadBid<T> read(Path file, Function<BidWithStatus, T> drawn) {
        try {
            JobRecords records = JobRecords.beside(file);
            Reading reading = reading(file, records);
            if (reading instanceof Refused refused) {
                return new ReadBid<>(file, Optional.empty(), refused.faults());
            }
            ReadJob understood = (ReadJob) reading;
            Quote quote = quote(understood, understood.job());
            List<Fault> unpriced = UnitPriceFaults.of(understood.job(), quote, file);
            return unpriced.isEmpty()
                    ? new ReadBid<>(file, Optional.of(drawn.apply(bid(understood, quote, records))), List.of())
                    : new ReadBid<>(file, Optional.empty(), unpriced);
        } catch (IOException | UncheckedIOException unreadable) {
            Fault fault = new Fault(
                    Place.ofFile(file.toString()),
                    "a job whose files cannot be read, " + Reason.of(unreadable),
                    "files that may be read",
                    "check them and the folder \"kept\"");
            return new ReadBid<>(file, Optional.empty(), List.of(fault));
        }
    }

    private Reading reading(Path file, JobRecords records) throws IOException {
        Optional<Entry> contract = records.contract();
        Optional<JobSource> signed = contract.isPresent() ? records.pricesOf(contract.get()) : Optional.empty();
        return signed.isPresent() ? signed(file, signed.get()) : intake.read(file);
    }

    private Reading signed(Path file, JobSource source) throws IOException {
        byte[] bundled = source.files().get(JobSource.BUNDLED_BOOK);
        String text = Files.readString(file);
        String agreedText = source.text(JobSource.JOB);
        Reading now = intake.readKept(text, file, source.books(), bundled);
        Reading then = text.equals(agreedText) ? now : intake.readKept(agreedText, file, source.books(), bundled);
        if (!(now instanceof ReadJob live) || !(then instanceof ReadJob agreed)) {
            return now instanceof Refused ? now : then;
        }
        Job job = AfterAcceptance.of(agreed.job(), live.job());
        return new ReadJob(job, agreed.company(), agreed.book(), live.states(), live.jobFolder());
    }

    private static BidWithStatus bid(ReadJob understood, Quote quote, JobRecords records) {
        Job job = understood.job();
        BidStatus standing = standing(job, records);
        PriceBook book = book(understood);
        if (job.agreement().accepted().isEmpty()
                && job.agreement().acceptedChanges().isEmpty()) {
            Sum sum = new Sum(quote.price(), quote.tax());
            return new BidWithStatus(standing, job, understood.company(), book, quote, sum);
        }
        MeasuredStages stages = new MeasuredStages(understood.company(), book);
        Contract contract = Contracting.of(job, stages, quote, records.sealed());
        Job agreed = Agreed.of(job);
        Quote agreedQuote = agreed.equals(job) ? quote : quote(agreed, stages);
        return new BidWithStatus(standing, agreed, understood.company(), book, agreedQuote, contract.now());
    }

    static PriceBook book(ReadJob understood) {
        Job job = understood.job();
        return JobBook.of(understood.book(), understood.company(), job);
    }

    private static Quote quote(ReadJob understood, Job job) {
        return quote(job, new MeasuredStages(understood.company(), book(understood)));
    }

    private static Quote quote(Job job, MeasuredStages stages) {
        Takeoff takeoff = stages.of(job).takeoff();
        return job.agreement().changes().isEmpty()
                ? Pricing.known(job, stages.company(), stages.book(), takeoff)
                : Pricing.of(job, stages.company(), stages.book(), takeoff);
    }

    private static BidStatus standing(Job job, JobRecords records) {
        if (records.certificate().isPresent() || job.closed().isPresent()) {
            return BidStatus.CLOSED;
        }
        if (records.canceled().isPresent()) {
            return BidStatus.LOST;
        }
        if (records.contract().isPresent() || job.agreement().accepted().isPresent()) {
            return BidStatus.ACCEPTED;
        }
        if (records.isLost()) {
            return BidStatus.LOST;
        }
        return records.proposal().isPresent() ? BidStatus.ISSUED : BidStatus.DRAFT;
    }
}
