// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.season;

import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.feedback.FeedbackSeason;
import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;
import spadework.season.Season;

/**
 * Everything that the report of a season prints, for the contractor only, finished. Days are in words.
 *
 * @param season with its sums
 * @param jobs every job of it
 * @param items what items took against the estimate, the greatest difference first
 * @param claims by cause
 * @param offers from what was offered to what was signed, as bars
 * @param money from what was signed to what is outstanding, as bars
 */
public record SeasonReport(
        PaperHead head,
        String from,
        String until,
        Season season,
        List<Row> jobs,
        List<FeedbackSeason.Total> items,
        List<ClaimRow> claims,
        Scene offers,
        Scene money) {

    public SeasonReport {
        jobs = List.copyOf(jobs);
        items = List.copyOf(items);
        claims = List.copyOf(claims);
    }

    /**
     * A job.
     *
     * @param standing in a word
     * @param worked blank while the job is not done
     */
    public record Row(
            String number,
            String title,
            String standing,
            String issued,
            Dollars total,
            int sold,
            String worked,
            Dollars invoiced,
            Dollars received,
            Dollars outstanding) {}

    /** Claims that one cause brought. */
    public record ClaimRow(String cause, int count, Dollars cost) {}
}
