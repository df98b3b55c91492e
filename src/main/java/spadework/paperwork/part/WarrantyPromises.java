// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.time.LocalDate;
import java.util.function.Function;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.law.WarrantyTerm;
import spadework.paperwork.PaperWords;

/** The warranty's terms. It runs from the completion date to the day before the same date years on. */
public final class WarrantyPromises {
    private WarrantyPromises() {}

    /** The terms with their days; those of the specimen until the job is closed. */
    public static WarrantyPromise of(PaperWords terms, Job job) {
        return job.closed()
                .map(Closed::completed)
                .map(start -> of(terms, job.warranty(), false, part -> running(terms, part, start)))
                .orElseGet(() -> specimen(terms, job));
    }

    /** The terms as they stood before anything was built. */
    public static WarrantyPromise specimen(PaperWords terms, Job job) {
        return of(terms, job.warranty(), true, part -> row(terms, part, "", ""));
    }

    private static WarrantyPromise of(
            PaperWords words, WarrantyTerms terms, boolean specimen, Function<WarrantyPart, WarrantyRow> row) {
        return new WarrantyPromise(
                specimen,
                terms.parts().stream().map(row).toList(),
                terms.replyDays(),
                terms.visitDays(),
                terms.findingDays(),
                terms.beginDays(),
                terms.transfers(),
                terms.transferNoticeDays(),
                words.own(terms.notCovered()),
                words.own(terms.duties()));
    }

    private static WarrantyRow running(PaperWords terms, WarrantyPart part, LocalDate start) {
        return row(terms, part, terms.day(start), terms.day(WarrantyTerm.lastDay(start, part.years())));
    }

    private static WarrantyRow row(PaperWords terms, WarrantyPart part, String firstDay, String lastDay) {
        return new WarrantyRow(terms.own(part.part()), terms.own(part.promise()), part.years(), firstDay, lastDay);
    }
}
