package spadework.intake;

import java.util.List;
import java.util.function.BiConsumer;
import spadework.job.Job;

/** Every check of what has to fit together in a job: one class a check. */
final class JobChecks {
    /** What an altered job has to hold as well. */
    private static final List<BiConsumer<Job, Sheet>> STRUCTURE =
            List.of(UniqueLabels::check, References::check, CornerEnds::check, HouseSides::check, RepeatedCodes::check);

    private static final List<BiConsumer<Job, Sheet>> REST =
            List.of(DateOrder::check, AgreementChecks::check, AlterationChecks::check);

    private JobChecks() {}

    static void all(Job job, Sheet sheet) {
        structure(job, sheet);
        REST.forEach(check -> check.accept(job, sheet));
    }

    /** The checks of walls, pipes, corners and items alone. */
    static void structure(Job job, Sheet sheet) {
        STRUCTURE.forEach(check -> check.accept(job, sheet));
    }
}
