// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.time.LocalDate;
import java.util.function.Function;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.law.WarrantyTerm;
import spadework.paperwork.PrintedDates;

/** The warranty's terms. It runs from the completion date to the day before the same date years on. */
public final class WarrantyPromises {
    private WarrantyPromises() {}

    /** The terms with their days; those of the specimen until the job is closed. */
    public static WarrantyPromise of(Job job) {
        return job.closed()
                .map(Closed::completed)
                .map(start -> of(job.warranty(), false, part -> running(part, start)))
                .orElseGet(() -> specimen(job));
    }

    /** The terms as they stood before anything was built. */
    public static WarrantyPromise specimen(Job job) {
        return of(job.warranty(), true, part -> row(part, "", ""));
    }

    private static WarrantyPromise of(WarrantyTerms terms, boolean specimen, Function<WarrantyPart, WarrantyRow> row) {
        return new WarrantyPromise(
                specimen,
                terms.parts().stream().map(row).toList(),
                terms.replyDays(),
                terms.visitDays(),
                terms.findingDays(),
                terms.beginDays(),
                terms.transfers(),
                terms.transferNoticeDays(),
                terms.notCovered(),
                terms.duties());
    }

    private static WarrantyRow running(WarrantyPart part, LocalDate start) {
        return row(part, PrintedDates.words(start), PrintedDates.words(WarrantyTerm.lastDay(start, part.years())));
    }

    private static WarrantyRow row(WarrantyPart part, String firstDay, String lastDay) {
        return new WarrantyRow(part.part(), part.promise(), part.years(), firstDay, lastDay);
    }
}
