// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.bids.BidStatus;
import spadework.bids.BidWithStatus;
import spadework.billing.Invoice;
import spadework.closeout.BuiltJob;
import spadework.feedback.FeedbackSeason;
import spadework.feedback.JobVariances;
import spadework.job.Change;
import spadework.job.Job;
import spadework.job.Received;
import spadework.money.Dollars;
import spadework.office.files.JobTree;
import spadework.office.records.BilledRecord;
import spadework.office.records.JobRecords;
import spadework.register.Register;
import spadework.register.WarrantyBook;
import spadework.schedule.CrewCalendar;
import spadework.schedule.DayQuantities;
import spadework.season.Season;
import spadework.season.SeasonClaim;
import spadework.season.SeasonJob;
import spadework.warranty.Claim;
import spadework.warranty.ClaimStep;

/** Reads the jobs of a season from their files and registers. */
final class SeasonReader {
    private final LocalDate from;
    private final LocalDate until;

    /** @param until the last day; a proposal of that day belongs to the season */
    SeasonReader(LocalDate from, LocalDate until) {
        this.from = from;
        this.until = until;
    }

    /**
     * A season.
     *
     * @param unread files that are left out, and why
     */
    record Read(Season season, List<String> unread) {}

    private record Drawn(SeasonJob job, Optional<JobVariances> taught) {}

    Read read(Path tree) throws IOException {
        BidReader reader = new BidReader();
        List<BidReader.ReadBid<Optional<Drawn>>> read =
                JobTree.each(tree, file -> reader.read(file, bid -> drawn(file, bid)));
        List<Drawn> drawn = read.stream()
                .flatMap(one -> one.drawn().stream())
                .flatMap(Optional::stream)
                .toList();
        FeedbackSeason taught = new FeedbackSeason(
                drawn.stream().flatMap(one -> one.taught().stream()).toList());
        return new Read(
                new Season(from, until, drawn.stream().map(Drawn::job).toList(), taught), BidsService.unread(read));
    }

    private Optional<Drawn> drawn(Path file, BidWithStatus bid) {
        LocalDate issued = bid.job().issued();
        if (bid.standing() == BidStatus.DRAFT || issued.isBefore(from) || issued.isAfter(until)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Drawn(job(file, bid), taught(bid)));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static SeasonJob job(Path file, BidWithStatus bid) throws IOException {
        JobRecords records = JobRecords.beside(file);
        Job job = bid.job();
        Dollars invoiced = Dollars.total(
                BilledRecord.invoices(records).stream().map(Invoice::amount).toList());
        Dollars received = Dollars.total(
                job.agreement().received().stream().map(Received::amount).toList());
        return new SeasonJob(
                job.number(),
                job.title(),
                bid.standing(),
                job.issued(),
                bid.sum().total(),
                new SeasonJob.Days(sold(job), worked(bid)),
                new SeasonJob.Money(invoiced, received),
                claims(records));
    }

    private static int sold(Job job) {
        return job.schedule().workingDays()
                + job.agreement().acceptedChanges().stream()
                        .mapToInt(Change::days)
                        .sum();
    }

    private static Optional<Integer> worked(BidWithStatus bid) {
        return bid.job()
                .agreement()
                .asBuilt()
                .flatMap(built ->
                        built.finished().map(last -> CrewCalendar.workedBetween(bid.company(), built.started(), last)));
    }

    private static Optional<JobVariances> taught(BidWithStatus bid) {
        return bid.standing() == BidStatus.CLOSED
                ? JobVariances.of(
                        bid.job(),
                        bid.company(),
                        bid.book(),
                        bid.quote(),
                        DayQuantities.takeoff(BuiltJob.of(bid.job()), bid.company(), bid.book()))
                : Optional.empty();
    }

    private static List<SeasonClaim> claims(JobRecords records) throws IOException {
        if (!Register.isIn(records.folder())) {
            return List.of();
        }
        List<SeasonClaim> claims = new ArrayList<>();
        for (Claim claim :
                WarrantyBook.of(Register.of(records.folder()).entries()).claims()) {
            claims.add(new SeasonClaim(
                    claim.number(),
                    claim.last(ClaimStep::cause)
                            .or(() -> claim.last(ClaimStep::clause))
                            .orElseGet(() -> claim.state().words()),
                    claim.last(ClaimStep::cost).orElse(Dollars.ZERO)));
        }
        return claims;
    }
}
