// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.time.LocalDate;
import java.util.function.Function;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.law.WarrantyTerm;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.takeoff.wall.WarrantedWalls;

/** The warranty's terms. It runs from the completion date to the day before the same date years on. */
public final class WarrantyPromises {
    private WarrantyPromises() {}

    /** The terms with their days; those of the specimen until the job is closed. */
    public static WarrantyPromise of(Dossier dossier, Job job) {
        return job.closed()
                .map(Closed::completed)
                .map(start -> of(dossier, job, false, part -> running(dossier.terms(), part, start)))
                .orElseGet(() -> specimen(dossier, job));
    }

    /** The terms as they stood before anything was built. */
    public static WarrantyPromise specimen(Dossier dossier, Job job) {
        return of(dossier, job, true, part -> row(dossier.terms(), part, "", ""));
    }

    private static WarrantyPromise of(
            Dossier dossier, Job job, boolean specimen, Function<WarrantyPart, WarrantyRow> row) {
        WarrantyTerms terms = job.warranty();
        return new WarrantyPromise(
                specimen,
                new WarrantedWalls(job, dossier.book())
                        .parts().stream().map(row).toList(),
                terms.replyDays(),
                terms.visitDays(),
                terms.findingDays(),
                terms.beginDays(),
                terms.transfers(),
                terms.transferNoticeDays(),
                dossier.terms().own(terms.notCovered()),
                dossier.terms().own(terms.duties()));
    }

    private static WarrantyRow running(PaperWords terms, WarrantyPart part, LocalDate start) {
        return row(terms, part, terms.day(start), terms.day(WarrantyTerm.lastDay(start, part.years())));
    }

    private static WarrantyRow row(PaperWords terms, WarrantyPart part, String firstDay, String lastDay) {
        return new WarrantyRow(terms.own(part.part()), terms.own(part.promise()), part.years(), firstDay, lastDay);
    }
}
