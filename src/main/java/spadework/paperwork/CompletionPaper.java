package spadework.paperwork;

import java.time.LocalDate;
import spadework.contract.QuantityChanges;
import spadework.drawing.PlanSketch;
import spadework.job.AsBuilt;
import spadework.job.Closed;
import spadework.job.FlowTest;
import spadework.job.Job;

/** Puts the completion statement together: facts of what was built, and the final account. */
public final class CompletionPaper {
    private CompletionPaper() {}

    /**
     * The completion statement of a job.
     *
     * @param agreed the agreed work
     * @throws java.util.NoSuchElementException if nothing was recorded as built
     */
    public static Completion of(Dossier agreed) {
        Job job = agreed.job();
        AsBuilt record = job.agreement().asBuilt().orElseThrow();
        BuiltRecord built = new BuiltRecord(agreed, record);
        return new Completion(
                Heads.of(agreed, day(agreed)),
                PlanSketch.of(built.built().job()),
                Dates.words(record.started()),
                Dates.words(record.finished()),
                job.closed().map(Closed::completed).map(Dates::words).orElse(""),
                job.closed().flatMap(Closed::certificate).orElse(""),
                AgreedParts.of(job.agreement()),
                built.walls(),
                built.pipes(),
                built.ground(),
                record.flowTests().stream().map(CompletionPaper::test).toList(),
                QuantityMoves.plain(
                        QuantityChanges.between(agreed.takeoff(), built.built().takeoff()), agreed.terms()),
                agreed.workPictures().holdPoints(),
                record.note(),
                FinalAccounts.of(agreed),
                Promises.of(job));
    }

    /** The day of the paper: the day from which the warranty runs, or else the last day of work. */
    public static LocalDate day(Dossier agreed) {
        return agreed.job()
                .closed()
                .map(Closed::completed)
                .orElseGet(
                        () -> agreed.job().agreement().asBuilt().orElseThrow().finished());
    }

    private static Completion.Test test(FlowTest test) {
        return new Completion.Test(Dates.words(test.on()), test.passed(), test.what(), test.by());
    }
}
