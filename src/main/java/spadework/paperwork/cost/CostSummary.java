// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.drawing.chart.RangeCurve;
import spadework.drawing.chart.Waterfall;
import spadework.drawing.shape.Scene;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.pricing.Quote;
import spadework.whatif.Case;
import spadework.whatif.Simulation;
import spadework.whatif.Uncertainty;

/**
 * What the job earns and where the risk sits, on one page: from cost to price, the range of the price, and the findings
 * that cost most.
 *
 * @param more in how many of a hundred jobs the rules would have asked for more
 * @param likely the amounts that 10, 50 and 90 of a hundred jobs do not exceed
 */
public record CostSummary(Scene waterfall, Scene range, int more, List<Dollars> likely, List<CostRisk> risks) {
    /** Enough for a curve, as each tells as much as several drawn blindly, and few enough to wait for. */
    private static final int RUNS = 50;

    private static final long SEED = 1;

    /** Less cannot be seen on the chart. */
    private static final BigDecimal HALF_A_DOLLAR = new BigDecimal("0.50");

    public CostSummary {
        likely = List.copyOf(likely);
        risks = List.copyOf(risks);
    }

    /** The summary of a job with its price as of today. */
    public static CostSummary of(Dossier dossier, Quote quote) {
        Simulation<Dollars> prices =
                Uncertainty.USUAL.prices(new Case(dossier.job(), dossier.company(), dossier.book()), RUNS, SEED);
        return new CostSummary(
                waterfall(dossier, quote),
                range(prices, quote.total(), dossier.terms()),
                (int) Math.round(100 * prices.above(quote.total())),
                likely(prices),
                new AskedWork(dossier, quote).most());
    }

    private static Scene waterfall(Dossier dossier, Quote quote) {
        PaperWords terms = dossier.terms();
        List<Waterfall.Bar> bars = new ArrayList<>();
        BigDecimal before = BigDecimal.ZERO;
        for (var step : quote.buildUp()) {
            String name = terms.get("bar." + step.symbol());
            boolean change = step.symbol().equals("R");
            BigDecimal value = step.value().setScale(2, RoundingMode.HALF_UP);
            BigDecimal adds = change ? value : value.subtract(before);
            boolean first = before.signum() == 0;
            if (adds.abs().compareTo(HALF_A_DOLLAR) >= 0) {
                bars.add(new Waterfall.Bar(name, adds.doubleValue(), dollars(adds), first));
            }
            before = change ? before.add(value) : value;
        }
        if (!quote.minimumTopUp().isZero()) {
            bars.add(new Waterfall.Bar(
                    terms.get("bar.minimum"),
                    quote.minimumTopUp().amount().doubleValue(),
                    dollars(quote.minimumTopUp().amount()),
                    false));
        }
        bars.add(new Waterfall.Bar(
                terms.get("bar.price"),
                quote.price().amount().doubleValue(),
                dollars(quote.price().amount()),
                true));
        String words = bars.stream()
                .map(bar -> bar.name() + " " + bar.text())
                .reduce((one, next) -> one + ", " + next)
                .orElse("");
        return Waterfall.of(bars, terms.get("bar.words", "bars", words));
    }

    private static List<Dollars> likely(Simulation<Dollars> prices) {
        return List.of(prices.quantile(0.1), prices.quantile(0.5), prices.quantile(0.9));
    }

    static Scene range(Simulation<Dollars> prices, Dollars total, PaperWords terms) {
        List<Dollars> likely = likely(prices);
        List<Double> outcomes = prices.outcomes().stream()
                .map(price -> price.amount().doubleValue())
                .toList();
        Dollars least = prices.outcomes().get(0);
        Dollars most = prices.outcomes().get(prices.outcomes().size() - 1);
        return RangeCurve.of(
                outcomes,
                new RangeCurve.Mark(
                        total.amount().doubleValue(), terms.get("range.here", "price", dollars(total.amount()))),
                List.of(mark(least), mark(most)),
                terms.get(
                        "range.words",
                        "low",
                        likely.get(0).text(),
                        "middle",
                        likely.get(1).text(),
                        "high",
                        likely.get(2).text(),
                        "price",
                        total.text()));
    }

    private static RangeCurve.Mark mark(Dollars amount) {
        return new RangeCurve.Mark(amount.amount().doubleValue(), dollars(amount.amount()));
    }

    /** Whole dollars, for a chart. */
    private static String dollars(BigDecimal amount) {
        String whole = String.format(
                Locale.ROOT,
                "%,d",
                amount.abs().setScale(0, RoundingMode.HALF_UP).longValueExact());
        return (amount.signum() < 0 ? "\u2212$" : "$") + whole;
    }
}
