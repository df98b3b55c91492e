package spadework.intake;

import java.util.List;
import java.util.function.BiConsumer;
import spadework.job.Job;

/** Every check of what has to fit together in a job: one class a check. */
final class JobChecks {
    private static final List<BiConsumer<Job, Sheet>> ALL = List.of(
            UniqueLabels::check,
            References::check,
            CornerEnds::check,
            HouseSides::check,
            DateOrder::check,
            RepeatedCodes::check);

    private JobChecks() {}

    static void all(Job job, Sheet sheet) {
        ALL.forEach(check -> check.accept(job, sheet));
    }
}
