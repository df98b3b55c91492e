// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;

/**
 * Everything the feedback of closed jobs prints, for the contractor only, finished.
 *
 * @param from last day of work of the first job in words; {@code until} that of the last one
 * @param totals each item over all jobs
 * @param jobs each job with its items
 * @param rates the rates that are suggested
 */
public record FeedbackSheet(
        PaperHead head,
        String from,
        String until,
        List<FeedbackRow> totals,
        FeedbackRow sum,
        List<FeedbackJob> jobs,
        List<RateRow> rates) {

    /** Amounts of one item; hours, quantities and notes are empty where several jobs are put together. */
    public record FeedbackRow(
            String code,
            String name,
            String quantity,
            String hours,
            Dollars estimate,
            Dollars actual,
            Dollars quantityError,
            Dollars productionError,
            Dollars priceError,
            Dollars difference) {}

    /** One job. */
    public record FeedbackJob(String number, String title, String finished, String soil, List<FeedbackRow> rows) {}

    /**
     * A suggested rate.
     *
     * @param median true for the median of the last jobs, false for a quarter step a job
     * @param evidence one job a line
     */
    public record RateRow(
            String code, String name, String what, String from, String to, boolean median, List<String> evidence) {}
}
