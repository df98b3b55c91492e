// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.intake.ReadJob;
import spadework.intake.Reading;
import spadework.job.Accepted;
import spadework.job.AfterAcceptance;
import spadework.job.Job;
import spadework.job.Sale;
import spadework.job.Signing;

/**
 * A job whose contract is signed, read with the company and the book of that day. What was agreed is taken from the
 * contract's source, so that no later edit of the job file and no new price moves it; a finding says where they differ.
 */
public record SignedJob(Reading reading, List<Finding> findings) {
    private static final String SOURCE = "what both sides signed";

    /**
     * Reads the job's file in the light of what was signed.
     *
     * @param text what stands in it, or would stand
     */
    public static SignedJob read(Path file, String text, SignedSource signed) {
        Reading now = signed.read(text, file);
        if (!(now instanceof ReadJob live)) {
            return new SignedJob(now, List.of());
        }
        ReadJob agreed = signed.agreed();
        Job job = AfterAcceptance.of(agreed.job(), live.job());
        return new SignedJob(
                new ReadJob(job, agreed.company(), agreed.book(), agreed.states(), live.jobFolder()),
                findings(agreed.job(), live.job()));
    }

    private static List<Finding> findings(Job agreed, Job live) {
        List<Finding> found = new ArrayList<>();
        if (AfterAcceptance.isMoved(agreed, live)) {
            found.add(stop("job-moved", Map.of()));
        }
        if (!terms(agreed).equals(terms(live))) {
            found.add(stop("signing-moved", Map.of()));
        }
        Optional<Accepted> signed = agreed.agreement().accepted();
        if (!live.agreement().accepted().equals(signed)) {
            found.add(stop("acceptance-moved", Map.of()));
        }
        return found;
    }

    /** What a job says that was accepted without a contract's source beside it. */
    public static List<Finding> withoutSource(Job job) {
        return job.agreement().accepted().isPresent() ? List.of(stop("contract-source-missing", Map.of())) : List.of();
    }

    /**
     * How it was signed, without what is learned later: the day of the copy, and who signs later papers for an owner.
     */
    private static Optional<Signing> terms(Job job) {
        return job.agreement().signing().map(signing -> {
            Sale sale = signing.sale();
            return new Signing(
                    new Sale(
                            sale.on(),
                            sale.place(),
                            sale.salesperson(),
                            sale.oldestAge(),
                            sale.language(),
                            sale.emergency(),
                            sale.statement(),
                            sale.afterDisaster(),
                            Optional.empty()),
                    signing.financing(),
                    signing.subcontractors(),
                    signing.dateIsEssential(),
                    signing.permits(),
                    signing.materials(),
                    List.of());
        });
    }

    private static Finding stop(String id, Map<String, String> values) {
        return new Finding(id, Severity.STOP, "", values, SOURCE);
    }
}
