package spadework.paperwork.part;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.law.WarrantyTerm;
import spadework.paperwork.PrintedDates;

/** The warranty's terms. It runs from the completion date to the day before the same date years on. */
public final class WarrantyPromises {
    private WarrantyPromises() {}

    public static WarrantyPromise of(Job job) {
        return of(job.warranty(), job.closed().map(Closed::completed));
    }

    /** The terms as they stood before anything was built. */
    public static WarrantyPromise specimen(Job job) {
        return of(job.warranty(), Optional.empty());
    }

    private static WarrantyPromise of(WarrantyTerms terms, Optional<LocalDate> completed) {
        List<WarrantyRow> rows =
                terms.parts().stream().map(part -> row(part, completed)).toList();
        return new WarrantyPromise(
                completed.isEmpty(),
                rows,
                terms.replyDays(),
                terms.transfers(),
                terms.transferNoticeDays(),
                terms.notCovered(),
                terms.duties());
    }

    private static WarrantyRow row(WarrantyPart part, Optional<LocalDate> completed) {
        return new WarrantyRow(
                part.part(),
                part.promise(),
                part.years(),
                completed.map(PrintedDates::words).orElse(""),
                completed
                        .map(start -> PrintedDates.words(WarrantyTerm.lastDay(start, part.years())))
                        .orElse(""));
    }
}
