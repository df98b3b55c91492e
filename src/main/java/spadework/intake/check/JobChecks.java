// SPDX-License-Identifier: Apache-2.0
package spadework.intake.check;

import java.util.List;
import java.util.function.BiConsumer;
import spadework.intake.source.SourceFile;
import spadework.intake.value.DateOrder;
import spadework.job.Job;

/** Every check of what has to fit together in a job: one class a check. */
public final class JobChecks {
    /** What an altered job has to hold as well. */
    private static final List<BiConsumer<Job, SourceFile>> STRUCTURE = List.of(
            UniqueLabels::check,
            LabelReferences::check,
            BesideWallChecks::check,
            CornerChecks::check,
            HouseSideChecks::check,
            RepeatedCodes::check);

    private static final List<BiConsumer<Job, SourceFile>> REST =
            List.of(DateOrder::check, AgreementChecks::check, AlterationChecks::check);

    private JobChecks() {}

    public static void all(Job job, SourceFile sheet) {
        structure(job, sheet);
        REST.forEach(check -> check.accept(job, sheet));
    }

    /** The checks of walls, pipes, corners and items alone. */
    static void structure(Job job, SourceFile sheet) {
        STRUCTURE.forEach(check -> check.accept(job, sheet));
    }
}
