// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.closeout.Account;
import spadework.closeout.AppliedFilm;
import spadework.closeout.BalanceWaiver;
import spadework.closeout.BuiltJob;
import spadework.closeout.CloseChecks;
import spadework.finding.Finding;
import spadework.intake.Intake;
import spadework.job.AsBuilt;
import spadework.job.Job;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.Refusal;
import spadework.office.records.JobRecords;
import spadework.paperwork.Dossier;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.register.SealMark;
import spadework.takeoff.Measuring;
import spadework.wording.Wording;

/** Closes a job: the warranty certificate is issued from what was built. */
public final class Closing {
    private static final Wording WORDS = Wording.beside(Closing.class);

    private static final String PLACE = "/closed";

    private final Office office;
    private final LocalDate today;

    /** @param today the day on which the step is taken; nothing can have been closed later */
    public Closing(Office office, LocalDate today) {
        this.office = office;
        this.today = today;
    }

    /** What keeps a job open, and what is only worth knowing. */
    public static List<Finding> checks(Bid bid, BalanceWaiver waiver) {
        Dossier dossier = bid.dossier();
        Job built = BuiltJob.of(dossier.job());
        return CloseChecks.of(
                dossier.job(),
                AppliedFilm.of(built, dossier.book(), Measuring.of(built, dossier.book())),
                Account.of(dossier.contract(), dossier.job().agreement().received()),
                waiver);
    }

    /**
     * How a job is to be closed.
     *
     * @param on the day on which it is closed
     * @param completed the day from which the warranty runs; the last day of work where it is left out
     * @param waived why an open balance is waived
     */
    public record Asked(LocalDate on, Optional<LocalDate> completed, Optional<String> waived) {}

    /**
     * Closes a job.
     *
     * @throws IOException if a file cannot be read or written
     */
    public Outcome close(Path job, Asked asked) throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.readAndBid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        JobRecords records = JobRecords.beside(file);
        JobText text = JobText.of(Files.readString(file));
        if (records.certificate().isPresent()) {
            return repeated(records, text, file, asked);
        }
        List<String> reasons = new ArrayList<>(Signatures.future(asked.on(), today, "closed"));
        reasons.addAll(records.stopped());
        bid.dossier()
                .job()
                .agreement()
                .asBuilt()
                .flatMap(AsBuilt::finished)
                .ifPresent(finished -> reasons.addAll(days(finished, asked)));
        Stream.concat(
                        bid.openStops().stream(),
                        checks(bid, new BalanceWaiver(asked.waived())).stream().filter(CloseChecks::isOpen))
                .map(office::described)
                .forEach(reasons::add);
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        LocalDate from = asked.completed()
                .orElse(bid.dossier()
                        .job()
                        .agreement()
                        .asBuilt()
                        .flatMap(AsBuilt::finished)
                        .orElseThrow());
        JobText ended = text.with(PLACE + "/completed", from.toString());
        JobText closed = asked.waived()
                .map(why -> ended.with(PLACE + "/balanceWaived", why))
                .orElse(ended);
        if (office.bid(closed.text(), file) instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Entry entry = Register.of(records.folder())
                .issue(
                        DocumentKind.CERTIFICATE,
                        Event.CERTIFICATE_ISSUED,
                        bid.dossier().job().number(),
                        asked.on(),
                        OnceGuard.of(Event.CERTIFICATE_ISSUED),
                        (number, mark) -> issue(file, number, mark, numbered(closed, number)));
        String number = entry.number().orElseThrow().text();
        numbered(closed, entry.number().get()).write(file, List.of(PLACE));
        return new Outcome.Issued(number, RegisteredFiles.paths(records.folder(), entry));
    }

    /** What a close says of itself. */

    /** It was closed before; with the same facts it stands, or is finished where the program died on the way. */
    private static Outcome repeated(JobRecords records, JobText text, Path file, Asked asked) throws IOException {
        Entry certificate = records.certificate().orElseThrow();
        Optional<JobText> kept = InterruptedStep.kept(records, certificate);
        if (kept.isPresent()) {
            String from = kept.get().draft().shown(PLACE + "/completed");
            Optional<Outcome> refusal = new RepeatedStep(
                            certificate.number().orElseThrow().text())
                    .fact(
                            "the day of the close",
                            certificate.on().toString(),
                            asked.on().toString())
                    .fact(
                            "the first day of the warranty",
                            from,
                            asked.completed()
                                    .map(LocalDate::toString)
                                    .orElse(kept.get().draft().shown("/asBuilt/finished")))
                    .fact(
                            "why a balance is waived",
                            kept.get().draft().shown(PLACE + "/balanceWaived"),
                            asked.waived().orElse(""))
                    .refusal();
            if (refusal.isPresent()) {
                return refusal.get();
            }
        }
        return InterruptedStep.written(records, certificate, text, List.of(PLACE), file);
    }

    private static List<String> days(LocalDate finished, Asked asked) {
        LocalDate on = asked.on();
        List<String> reasons = new ArrayList<>();
        if (on.isBefore(finished)) {
            reasons.add(WORDS.get("closing.work-ended-on", finished, on));
        }
        asked.completed()
                .filter(day -> day.isAfter(on))
                .ifPresent(day -> reasons.add(WORDS.get("closing.warranty-cannot-run-from", day, on, finished, on)));
        asked.completed()
                .filter(day -> day.isBefore(finished))
                .ifPresent(day -> reasons.add(WORDS.get("closing.the-warranty-cannot-run-from", day, finished)));
        return reasons;
    }

    private static JobText numbered(JobText closed, DocumentNumber number) {
        return closed.with(PLACE + "/certificate", number.text());
    }

    private Issue issue(Path file, DocumentNumber number, SealMark mark, JobText closed) {
        Bid bid = (Bid) office.bid(closed.text(), file);
        Map<String, byte[]> kept = new LinkedHashMap<>();
        JobText.keep(kept, number.text(), closed);
        try {
            Map<String, byte[]> papers = RegisteredFiles.named(
                    number, office.issued(bid, EnumSet.of(PaperKind.WARRANTY, PaperKind.COMPLETION), mark));
            return new Issue(papers, kept, Map.of(), Optional.of(RegisteredWarranty.of(bid.dossier(), number.text())));
        } catch (IOException unusable) {
            throw new UncheckedIOException(unusable);
        }
    }
}
