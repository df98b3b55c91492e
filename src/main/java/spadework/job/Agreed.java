// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The work that is agreed: the job, the options that were taken, and the change orders that both sides signed. */
public final class Agreed {
    private Agreed() {}

    /** All that is agreed now. Before acceptance it is the job without its options. */
    public static Job of(Job job) {
        return before(job, Integer.MAX_VALUE);
    }

    /** The day since which the work is as it is: of the last change order, of the acceptance, of the proposal. */
    public static LocalDate on(Job job) {
        return job.agreement().acceptedChanges().stream()
                .flatMap(change -> change.decision().stream())
                .map(Decision::on)
                .max(LocalDate::compareTo)
                .or(() -> job.agreement().accepted().map(Accepted::on))
                .orElse(job.issued());
    }

    /** The job with the options that were taken, before any change. */
    public static Job contracted(Job job) {
        return before(job, 0);
    }

    /** What was agreed before the change order of that number: accepted ones with lower numbers are in it. */
    public static Job before(Job job, int number) {
        Job agreed = job;
        for (Alteration alteration : alterations(job.agreement(), number)) {
            agreed = Altered.of(agreed, alteration);
        }
        return agreed;
    }

    private static List<Alteration> alterations(Agreement agreement, int number) {
        List<Alteration> alterations = new ArrayList<>();
        agreement
                .accepted()
                .ifPresent(yes -> yes.options()
                        .forEach(
                                label -> alterations.add(agreement.option(label).alteration())));
        agreement.acceptedChanges().stream()
                .filter(change -> change.number() < number)
                .forEach(change -> alterations.add(change.work()));
        return alterations;
    }
}
