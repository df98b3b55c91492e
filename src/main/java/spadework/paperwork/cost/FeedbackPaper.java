// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.time.LocalDate;
import java.util.List;
import spadework.company.Company;
import spadework.feedback.FeedbackSeason;
import spadework.feedback.JobVariances;
import spadework.feedback.RateRule;
import spadework.feedback.Suggestion;
import spadework.feedback.Variance;
import spadework.measure.Figures;
import spadework.money.Dollars;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.cost.FeedbackSheet.FeedbackJob;
import spadework.paperwork.cost.FeedbackSheet.FeedbackRow;
import spadework.paperwork.cost.FeedbackSheet.RateRow;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaperHeads;

/** Puts the feedback of closed jobs together. */
public final class FeedbackPaper {
    private FeedbackPaper() {}

    /**
     * The feedback as a paper of a day.
     *
     * @param season at least one job
     */
    public static FeedbackSheet of(Company company, FeedbackSeason season, List<Suggestion> suggestions, LocalDate on) {
        List<JobVariances> jobs = season.jobs();
        JobVariances first = jobs.get(0);
        JobVariances last = jobs.get(jobs.size() - 1);
        List<Variance> all = jobs.stream().flatMap(job -> job.items().stream()).toList();
        String numbers = jobs.size() == 1 ? first.number() : first.number() + " – " + last.number();
        PaperHead head = new PaperHead(
                PaperHeads.firm(company),
                numbers,
                jobs.size() == 1 ? first.title() : "",
                PrintedDates.words(on),
                on.toString(),
                "",
                List.of(),
                "",
                "",
                false);
        return new FeedbackSheet(
                head,
                PrintedDates.words(first.finished()),
                PrintedDates.words(last.finished()),
                season.totals().stream().map(FeedbackPaper::row).toList(),
                sum(all),
                jobs.stream().map(FeedbackPaper::job).toList(),
                suggestions.stream().map(FeedbackPaper::rate).toList());
    }

    private static FeedbackJob job(JobVariances job) {
        return new FeedbackJob(
                job.number(),
                job.title(),
                PrintedDates.words(job.finished()),
                job.soil(),
                job.items().stream().map(FeedbackPaper::row).toList());
    }

    private static FeedbackRow row(FeedbackSeason.Total total) {
        return new FeedbackRow(
                total.code(),
                total.name(),
                "",
                "",
                total.estimate(),
                total.actual(),
                total.quantityError(),
                total.productionError(),
                total.priceError(),
                total.actual().minus(total.estimate()));
    }

    private static FeedbackRow row(Variance item) {
        String hours = item.hours()
                .actual()
                .map(came -> Figures.inWorking(item.hours().estimated()) + " → " + Figures.inWorking(came))
                .orElse("");
        return new FeedbackRow(
                item.code(),
                item.name(),
                Figures.inWorking(item.quantity().estimated()) + " → "
                        + Figures.inWorking(item.quantity().actual()) + " "
                        + item.unit().symbol(),
                hours,
                item.cost().estimated(),
                item.cost().actual(),
                item.error().quantity(),
                item.error().production(),
                item.error().price(),
                item.difference());
    }

    private static FeedbackRow sum(List<Variance> all) {
        Dollars estimate = FeedbackSeason.sum(all, one -> one.cost().estimated());
        Dollars actual = FeedbackSeason.sum(all, one -> one.cost().actual());
        return new FeedbackRow(
                "",
                "",
                "",
                "",
                estimate,
                actual,
                FeedbackSeason.sum(all, one -> one.error().quantity()),
                FeedbackSeason.sum(all, one -> one.error().production()),
                FeedbackSeason.sum(all, one -> one.error().price()),
                actual.minus(estimate));
    }

    private static RateRow rate(Suggestion one) {
        return new RateRow(
                one.code(),
                one.name(),
                one.what(),
                one.from(),
                one.to(),
                one.rule() == RateRule.MEDIAN,
                one.evidence().stream()
                        .map(job -> job.job() + ", " + job.finished() + ", " + job.soil() + ": " + job.rate())
                        .toList());
    }
}
