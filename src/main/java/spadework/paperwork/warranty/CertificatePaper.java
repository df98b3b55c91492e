// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.util.List;
import spadework.closeout.BuiltJob;
import spadework.drawing.shape.Scene;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.WarrantyPromises;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWorks;

/** Puts the warranty certificate together: of what was built, once it has a number; until then a specimen. */
public final class CertificatePaper {
    private CertificatePaper() {}

    public static WarrantyCertificate of(Dossier dossier, Scene plan) {
        return of(
                dossier,
                plan,
                dossier.job().closed().flatMap(Closed::certificate).isPresent());
    }

    /** The specimen that is attached to a contract, whatever became of the job afterwards. */
    public static WarrantyCertificate specimen(Dossier contracted, Scene plan) {
        return of(contracted, plan, false);
    }

    private static WarrantyCertificate of(Dossier dossier, Scene plan, boolean issued) {
        Dossier covered = issued ? dossier.about(BuiltJob.of(dossier.job())) : dossier;
        Job job = covered.job();
        return new WarrantyCertificate(
                issued ? PaperHeads.of(dossier, job.closed().orElseThrow().completed()) : PaperHeads.of(dossier),
                issued ? job.closed().flatMap(Closed::certificate).orElseThrow() : job.number(),
                plan,
                issued ? WarrantyPromises.of(dossier, job) : WarrantyPromises.specimen(dossier, job),
                new WallWorks(covered).all(),
                issued ? runs(covered) : new PipeWorks(covered).all(),
                dossier.terms().get("state." + job.site().address().state()),
                issued ? AgreedParts.ofCoverage(dossier.terms(), job.agreement()) : List.of());
    }

    /** The pipes with their recorded lengths: a drain's own is measured along its walls. */
    private static List<PipeWork> runs(Dossier covered) {
        return new PipeWorks(covered)
                .all().stream()
                        .map(run -> covered.job()
                                .agreement()
                                .finishedWork()
                                .flatMap(built -> built.pipe(run.label()))
                                .map(pipe -> new PipeWork(
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
