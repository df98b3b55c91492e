// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;

/**
 * What the jobs of a season, or one job, say together.
 *
 * @param jobs by their last day, oldest first
 */
public record FeedbackSeason(List<JobVariances> jobs) {

    public FeedbackSeason {
        jobs = jobs.stream()
                .sorted(Comparator.comparing(JobVariances::finished).thenComparing(JobVariances::number))
                .toList();
    }

    /** An item over all jobs. */
    public record Total(
            String code,
            String name,
            int jobs,
            Dollars estimate,
            Dollars actual,
            Dollars quantityError,
            Dollars productionError,
            Dollars priceError) {}

    /** Every item over all jobs, by code. */
    public List<Total> totals() {
        Map<String, List<Variance>> byCode = new TreeMap<>();
        jobs.forEach(job -> job.items()
                .forEach(item -> byCode.computeIfAbsent(item.code(), code -> new ArrayList<>())
                        .add(item)));
        return byCode.values().stream().map(FeedbackSeason::total).toList();
    }

    private static Total total(List<Variance> items) {
        return new Total(
                items.get(0).code(),
                items.get(0).name(),
                items.size(),
                sum(items, one -> one.cost().estimated()),
                sum(items, one -> one.cost().actual()),
                sum(items, one -> one.error().quantity()),
                sum(items, one -> one.error().production()),
                sum(items, one -> one.error().price()));
    }

    /** The sum of one amount. */
    public static Dollars sum(List<Variance> items, Function<Variance, Dollars> amount) {
        return Dollars.total(items.stream().map(amount).toList());
    }

    /**
     * The rates that differ from the book of today. Production is printed to hundredths, prices to cents.
     *
     * @param rule how a rate is drawn from the jobs
     */
    public List<Suggestion> suggestions(PriceBook book, RateRule rule) {
        List<Suggestion> suggestions = new ArrayList<>();
        for (Total total : totals()) {
            Optional<LineItem> item = book.find(total.code());
            item.flatMap(one -> production(one, rule)).ifPresent(suggestions::add);
            item.flatMap(one -> material(one, rule)).ifPresent(suggestions::add);
        }
        return suggestions;
    }

    private Optional<Suggestion> production(LineItem item, RateRule rule) {
        return item.labor()
                .flatMap(labor -> suggestion(
                        item,
                        "labor/perHour",
                        labor.perHour(),
                        rule,
                        variance -> variance.hours().production(),
                        rate -> plain(rate) + " " + item.unit().symbol()));
    }

    /**
     * A package costs as much more or less than in the job's own book as the invoices did than the estimate for the
     * same quantity. So a rate that was taken into today's book is not suggested again.
     */
    private Optional<Suggestion> material(LineItem item, RateRule rule) {
        Optional<BigDecimal> cost = item.material().map(Material::cost).map(Dollars::amount);
        return cost.filter(amount -> amount.signum() > 0)
                .flatMap(amount -> suggestion(
                        item,
                        "material/cost",
                        amount,
                        rule,
                        variance -> variance.purchases()
                                .factor()
                                .flatMap(factor -> variance.purchases()
                                        .packageCost()
                                        .map(then -> factor.multiply(then.amount(), MathContext.DECIMAL64))),
                        rate -> "$" + rate.setScale(2, RoundingMode.HALF_UP).toPlainString()));
    }

    private Optional<Suggestion> suggestion(
            LineItem item,
            String what,
            BigDecimal old,
            RateRule rule,
            Function<Variance, Optional<BigDecimal>> rate,
            Function<BigDecimal, String> spelled) {
        Map<JobVariances, BigDecimal> rates = new LinkedHashMap<>();
        for (JobVariances job : jobs) {
            job.items().stream()
                    .filter(one -> one.code().equals(item.code()))
                    .findFirst()
                    .flatMap(rate)
                    .ifPresent(value -> rates.put(job, value));
        }
        if (!rule.isEnough(rates.size())) {
            return Optional.empty();
        }
        List<JobVariances> used = new ArrayList<>(rates.keySet());
        if (rule == RateRule.MEDIAN) {
            used = used.subList(Math.max(0, used.size() - RateRule.LAST), used.size());
        }
        String from = spelled.apply(old);
        String to = spelled.apply(rule.of(old, List.copyOf(rates.values())));
        List<Suggestion.Evidence> evidence = used.stream()
                .map(job -> new Suggestion.Evidence(
                        job.number(), job.finished().toString(), job.soil(), spelled.apply(rates.get(job))))
                .toList();
        return from.equals(to)
                ? Optional.empty()
                : Optional.of(new Suggestion(item.code(), item.name(), what, from, to, rule, evidence));
    }

    private static String plain(BigDecimal rate) {
        BigDecimal tidy = rate.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return tidy.setScale(Math.max(0, tidy.scale())).toPlainString();
    }
}
