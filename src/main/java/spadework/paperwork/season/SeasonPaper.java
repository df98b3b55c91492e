// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.season;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import spadework.company.Company;
import spadework.drawing.chart.Waterfall;
import spadework.drawing.shape.Scene;
import spadework.feedback.FeedbackSeason;
import spadework.money.Dollars;
import spadework.paperwork.PaperWords;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaperHeads;
import spadework.season.Season;
import spadework.season.SeasonJob;

/** Puts the report of a season together. */
public final class SeasonPaper {
    private final Season season;
    private final PaperWords words;

    private SeasonPaper(Season season, PaperWords words) {
        this.season = season;
        this.words = words;
    }

    /** The report as a paper of a day. */
    public static SeasonReport of(Company company, Season season, PaperWords words, LocalDate on) {
        return new SeasonPaper(season, words).report(company, on);
    }

    private SeasonReport report(Company company, LocalDate on) {
        PaperHead head = new PaperHead(
                PaperHeads.firm(company),
                season.from() + " – " + season.until(),
                "",
                PrintedDates.words(on),
                on.toString(),
                "",
                List.of(),
                "",
                "",
                false);
        return new SeasonReport(
                head,
                PrintedDates.words(season.from()),
                PrintedDates.words(season.until()),
                season,
                season.jobs().stream().map(this::row).toList(),
                season.feedback().totals().stream()
                        .sorted(Comparator.comparing(SeasonPaper::difference).reversed())
                        .toList(),
                season.claims().entrySet().stream()
                        .map(cause -> new SeasonReport.ClaimRow(
                                cause.getKey(),
                                cause.getValue().jobs(),
                                cause.getValue().total()))
                        .toList(),
                offers(),
                money());
    }

    private SeasonReport.Row row(SeasonJob job) {
        return new SeasonReport.Row(
                job.number(),
                job.title(),
                words.get("standing." + PaperWords.key(job.standing().name())),
                PrintedDates.words(job.issued()),
                job.total(),
                job.days().sold(),
                job.days().worked().map(String::valueOf).orElse(""),
                job.money().invoiced(),
                job.money().received(),
                job.money().outstanding());
    }

    private static BigDecimal difference(FeedbackSeason.Total item) {
        return item.actual().minus(item.estimate()).amount().abs();
    }

    private Scene offers() {
        return bars(
                List.of(
                        bar("bar.offered", season.offered().total(), true),
                        bar("bar.lost", negative(season.lost().total()), false),
                        bar("bar.open", negative(season.open().total()), false),
                        bar("bar.signed", season.won().total(), true)),
                words.get("bars.offers"));
    }

    private Scene money() {
        Dollars signed = season.won().total();
        return bars(
                List.of(
                        bar("bar.signed", signed, true),
                        bar("bar.unbilled", season.invoiced().minus(signed), false),
                        bar("bar.paid", season.outstanding().minus(season.invoiced()), false),
                        bar("bar.outstanding", season.outstanding(), true)),
                words.get("bars.money"));
    }

    private static Dollars negative(Dollars amount) {
        return Dollars.ZERO.minus(amount);
    }

    private Waterfall.Bar bar(String name, Dollars amount, boolean whole) {
        return new Waterfall.Bar(words.get(name), amount.amount().doubleValue(), text(amount), whole);
    }

    private static String text(Dollars amount) {
        String digits = String.format(Locale.ROOT, "%,.0f", amount.amount().abs());
        return (amount.isNegative() ? "\u2212" : "") + "$" + digits;
    }

    private static Scene bars(List<Waterfall.Bar> bars, String title) {
        List<String> lines = new ArrayList<>();
        bars.forEach(bar -> lines.add(bar.name() + " " + bar.text()));
        return Waterfall.of(bars, title + " " + String.join(", ", lines) + ".");
    }
}
