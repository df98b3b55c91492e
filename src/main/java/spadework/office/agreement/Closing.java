package spadework.office.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.closeout.Account;
import spadework.closeout.AppliedFilm;
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
import spadework.takeoff.Measuring;

/** Closes a job: the warranty certificate is issued from what was built. */
public final class Closing {
    private static final String PLACE = "/closed";

    private final Office office;

    public Closing(Office office) {
        this.office = office;
    }

    /** What keeps a job open, and what is only worth knowing. */
    public List<Finding> checks(Bid bid, Optional<String> waived) {
        Dossier dossier = bid.dossier();
        Job built = BuiltJob.of(dossier.job());
        return CloseChecks.of(
                dossier.job(),
                AppliedFilm.of(built, dossier.book(), Measuring.of(built, dossier.book())),
                Account.of(dossier.contract(), dossier.job().agreement().received()),
                waived);
    }

    /**
     * Closes a job.
     *
     * @param on the day on which it is closed
     * @param completed the day from which the warranty runs; the last day of work where it is left out
     * @param waived why an open balance is waived
     * @throws IOException if a file cannot be read or written
     */
    public Outcome close(Path job, LocalDate on, Optional<LocalDate> completed, Optional<String> waived)
            throws IOException {
        Path file = Intake.fileOf(job);
        BidResult answer = office.bid(job, Optional.empty());
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        JobRecords records = JobRecords.beside(file);
        JobText text = JobText.of(Files.readString(file));
        if (records.certificate().isPresent()) {
            return InterruptedStep.written(records, records.certificate().get(), text, List.of(PLACE), file);
        }
        List<String> reasons = Stream.concat(
                        bid.openStops().stream(), checks(bid, waived).stream().filter(CloseChecks::isOpen))
                .map(office::told)
                .toList();
        if (!reasons.isEmpty()) {
            return new Outcome.Refused(reasons);
        }
        LocalDate from = completed.orElse(
                bid.dossier().job().agreement().asBuilt().map(AsBuilt::finished).orElseThrow());
        JobText closed = text.with(PLACE + "/completed", from.toString()).with(PLACE + "/balanceWaived", waived);
        if (office.bid(closed.text(), file) instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Entry entry = Register.of(records.folder())
                .issue(
                        DocumentKind.CERTIFICATE,
                        Event.CERTIFICATE_ISSUED,
                        bid.dossier().job().number(),
                        on,
                        OnceGuard.of(Event.CERTIFICATE_ISSUED),
                        number -> issue(file, number, numbered(closed, number)));
        String number = entry.number().orElseThrow().text();
        numbered(closed, entry.number().get()).write(file);
        return new Outcome.Issued(number, RegisteredFiles.paths(records.folder(), entry));
    }

    private static JobText numbered(JobText closed, DocumentNumber number) {
        return closed.with(PLACE + "/certificate", number.text());
    }

    private Issue issue(Path file, DocumentNumber number, JobText closed) {
        Bid bid = (Bid) office.bid(closed.text(), file);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.putAll(
                RegisteredFiles.named(number, office.print(bid, EnumSet.of(PaperKind.WARRANTY, PaperKind.COMPLETION))));
        JobText.keep(files, number.text(), closed);
        return new Issue(files, Map.of(), Optional.of(RegisteredWarranty.of(bid.dossier(), number.text())));
    }
}
