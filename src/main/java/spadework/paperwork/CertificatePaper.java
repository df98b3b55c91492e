package spadework.paperwork;

import spadework.drawing.Scene;
import spadework.job.Job;

/** Puts the warranty certificate together: a specimen until the job is closed. */
public final class CertificatePaper {
    private CertificatePaper() {}

    public static Certificate of(Dossier dossier, Scene plan) {
        Job job = dossier.job();
        return new Certificate(
                Heads.of(dossier),
                job.number(),
                plan,
                Promises.of(job),
                new WallWorks(dossier).all(),
                new Runs(dossier).all(),
                dossier.terms().get("state." + job.site().address().state()));
    }
}
