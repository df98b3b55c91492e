// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.time.LocalDate;
import java.util.Optional;
import spadework.intake.source.SourceFile;
import spadework.job.Closed;
import spadework.job.Job;

/** Issued, then started, then finished. */
public final class DateOrder {
    private DateOrder() {}

    public static void check(Job job, SourceFile sheet) {
        LocalDate start = job.schedule().earliestStart();
        inOrder(sheet, "/issued", job.issued(), "/schedule/earliestStart", start);
        inOrder(
                sheet,
                "/schedule/earliestStart",
                start,
                "/schedule/latestFinish",
                job.schedule().latestFinish());
        Optional<LocalDate> completed = job.closed().map(Closed::completed);
        completed.ifPresent(day -> inOrder(sheet, "/issued", job.issued(), "/closed/completed", day));
    }

    /** Notes a fault where the second day lies before the first. */
    public static void inOrder(SourceFile sheet, String first, LocalDate earlier, String second, LocalDate later) {
        if (sheet.isSound(first) && sheet.isSound(second) && later.isBefore(earlier)) {
            String name = first.substring(first.lastIndexOf('/') + 1);
            String allowed = "a day not before \"" + name + "\", " + earlier;
            sheet.fault(second, later.toString(), allowed, "change one of the two dates");
        }
    }
}
