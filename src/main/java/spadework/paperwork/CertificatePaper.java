package spadework.paperwork;

import java.util.List;
import spadework.closeout.BuiltJob;
import spadework.drawing.Scene;
import spadework.job.Closed;
import spadework.job.Job;

/** Puts the warranty certificate together: of what was built, once it has a number; until then a specimen. */
public final class CertificatePaper {
    private CertificatePaper() {}

    public static Certificate of(Dossier dossier, Scene plan) {
        boolean issued = dossier.job().closed().flatMap(Closed::certificate).isPresent();
        Dossier covered = issued ? dossier.about(BuiltJob.of(dossier.job())) : dossier;
        Job job = covered.job();
        return new Certificate(
                issued ? Heads.of(dossier, job.closed().orElseThrow().completed()) : Heads.of(dossier),
                job.closed().flatMap(Closed::certificate).orElse(job.number()),
                plan,
                issued ? Promises.of(job) : Promises.specimen(job),
                new WallWorks(covered).all(),
                runs(covered),
                dossier.terms().get("state." + job.site().address().state()),
                issued ? AgreedParts.ofCoverage(job.agreement()) : List.of());
    }

    /** The pipes with their recorded lengths: a drain's own is measured along its walls. */
    private static List<Run> runs(Dossier covered) {
        return new Runs(covered)
                .all().stream()
                        .map(run -> covered.job()
                                .agreement()
                                .asBuilt()
                                .flatMap(built -> built.pipe(run.label()))
                                .map(pipe -> new Run(
                                        run.label(),
                                        run.kind(),
                                        run.pipe(),
                                        pipe.length().text(),
                                        run.levels(),
                                        run.into(),
                                        run.takes()))
                                .orElse(run))
                        .toList();
    }
}
