package spadework.office;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Place;
import spadework.finding.Severity;
import spadework.intake.Intake;
import spadework.intake.Reading;
import spadework.intake.Refused;
import spadework.intake.Understood;
import spadework.job.Accepted;
import spadework.job.AfterAcceptance;
import spadework.job.Job;

/**
 * A job whose contract is signed, read with the company and the book of that day. What was agreed is taken from the
 * contract's source, so that no later edit of the job file and no new price moves it; a finding says where they differ.
 */
record SignedJob(Reading reading, List<Finding> findings) {
    private static final String SOURCE = "what both sides signed";

    /** Reads the job's file in the light of what was signed. */
    static SignedJob read(Path file, String text, Source signed) throws IOException {
        try (Frozen frozen = Frozen.of(signed)) {
            Intake intake = frozen.intake();
            Reading now = intake.read(text, frozen.job());
            if (now instanceof Refused refused) {
                return new SignedJob(new Refused(named(refused.faults(), frozen.job(), file)), List.of());
            }
            Reading then = intake.read(frozen.job());
            if (!(then instanceof Understood agreed)) {
                throw new IOException("the source of the contract beside " + file + " cannot be read: "
                        + ((Refused) then).faults().get(0).text());
            }
            Understood live = (Understood) now;
            Job job = AfterAcceptance.of(agreed.job(), live.job());
            Path folder = file.toAbsolutePath().getParent();
            return new SignedJob(
                    new Understood(job, agreed.company(), agreed.book(), agreed.states(), folder),
                    findings(agreed.job(), live.job()));
        }
    }

    private static List<Finding> findings(Job agreed, Job live) {
        List<Finding> found = new ArrayList<>();
        if (AfterAcceptance.isMoved(agreed, live)) {
            found.add(stop("job-moved", Map.of()));
        }
        Optional<Accepted> signed = agreed.agreement().accepted();
        if (!live.agreement().accepted().equals(signed)) {
            found.add(stop("acceptance-moved", Map.of()));
        }
        return found;
    }

    /** What a job says that was accepted without a contract's source beside it. */
    static List<Finding> withoutSource(Job job) {
        return job.agreement().accepted().isPresent() ? List.of(stop("contract-source-missing", Map.of())) : List.of();
    }

    private static Finding stop(String id, Map<String, String> values) {
        return new Finding(id, Severity.STOP, "", values, SOURCE);
    }

    /** Faults at places in the laid-out folder, told for the file that the user knows. */
    private static List<Fault> named(List<Fault> faults, Path laidOut, Path file) {
        return faults.stream()
                .map(fault -> {
                    Place at = fault.place();
                    String name = at.file().equals(laidOut.toString()) ? file.toString() : at.file();
                    return new Fault(
                            new Place(name, at.line(), at.column(), at.pointer()),
                            fault.found(),
                            fault.allowed(),
                            fault.mend());
                })
                .toList();
    }
}
