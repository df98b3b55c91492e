// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spadework.contract.Sum;
import spadework.finding.Fault;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.reply.Reply;
import spadework.office.reply.TextColumns;
import spadework.paperwork.cost.PricePictures;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;
import spadework.pricing.Selling;
import spadework.whatif.Case;
import spadework.whatif.Settings;
import spadework.whatif.Simulation;
import spadework.whatif.Uncertainty;
import spadework.wording.Wording;

/** The price of a job with something otherwise, for the contractor's eyes. Nothing is written. */
public final class WhatIf {
    private static final Wording WORDS = Wording.beside(WhatIf.class);

    /** Runs behind a curve that follows a slider: few enough to follow it. */
    private static final int PICTURED = 100;

    private static final long PICTURE_SEED = 1;

    private static final String AS_IT_IS = "as it is";

    private WhatIf() {}

    /**
     * Prices side by side.
     *
     * @param rows the first names the columns; the first cell of each other one says what it is
     * @param stops by setting, those that it would bring; a price of work that nobody may do is no offer
     */
    public record Beside(List<List<String>> rows, Map<String, List<String>> stops, List<Fault> faults) {

        public Beside {
            rows = List.copyOf(rows);
            faults = List.copyOf(faults);
        }
    }

    /** The agreed work side by side: as it is, and once for each of the settings. */
    public static Reply sideBySide(Bid bid, List<String> typed) {
        Beside beside = beside(bid, typed);
        if (!beside.faults.isEmpty()) {
            return Reply.refused(beside.faults);
        }
        List<String> out = new ArrayList<>(TextColumns.of(beside.rows));
        beside.stops.forEach((setting, stops) -> stops.forEach(stop -> out.add(setting + ": " + stop)));
        return Reply.done(out);
    }

    /** The same in cells. */
    public static Beside beside(Bid bid, List<String> typed) {
        Case asItIs = of(bid);
        Map<String, Case> cases = new LinkedHashMap<>(Map.of(AS_IT_IS, asItIs));
        List<Fault> faults = new ArrayList<>();
        for (String one : typed) {
            Settings settings = Settings.read(one, asItIs.company());
            faults.addAll(settings.faults());
            if (settings.faults().isEmpty()) {
                cases.put(one, settings.change().apply(asItIs));
            }
        }
        if (!faults.isEmpty()) {
            return new Beside(List.of(), Map.of(), faults);
        }
        Map<String, List<String>> stops = new LinkedHashMap<>();
        cases.forEach((setting, one) -> stops.put(setting, bid.addedStops(one)));
        List<List<String>> rows = table(cases, beyond(bid, asItIs.quote()));
        if (stops.values().stream().anyMatch(added -> !added.isEmpty())) {
            rows.add(row(
                    WORDS.get("what-if.stops"),
                    stops.values().stream()
                            .map(added -> Integer.toString(added.size()))
                            .toList()));
        }
        return new Beside(rows, stops, faults);
    }

    /** The company's profit in whole percent, on the basis that {@link #profitKey} names. */
    public static int profit(Bid bid) {
        return bid.dossier()
                .company()
                .priceRules()
                .profit()
                .points()
                .setScale(0, RoundingMode.HALF_UP)
                .intValue();
    }

    /** What the company's profit is a share of: {@code margin} or {@code markup}. */
    public static String profitKey(Bid bid) {
        return bid.dossier().company().priceRules().basis().name().toLowerCase(Locale.ROOT);
    }

    /**
     * The job otherwise, in pictures; the range by the usual doubts.
     *
     * @throws IllegalArgumentException if the settings are at fault
     */
    public static WhatIfPicture picture(Bid bid, String typed) {
        Case asItIs = of(bid);
        Settings settings = Settings.read(typed, asItIs.company());
        if (!settings.faults().isEmpty()) {
            throw new IllegalArgumentException(settings.faults().get(0).text());
        }
        Case otherwise = settings.change().apply(asItIs);
        Quote quote = otherwise.quote();
        Quote now = asItIs.quote();
        Sum beyond = beyond(bid, now);
        Dollars price = quote.total().plus(beyond.total());
        PricePictures pictures = PricePictures.of(
                bid.dossier(), otherwise, Uncertainty.USUAL.prices(otherwise, PICTURED, PICTURE_SEED), price);
        return new WhatIfPicture(
                price.text(),
                signed(price.minus(bid.total())),
                left(otherwise, quote, beyond),
                pictures.range(),
                pictures.days());
    }

    /** Quantiles of the price, with their meaning. */
    public static Reply range(Bid bid, String typed, int runs, long seed) {
        Uncertainty.Typed read = Uncertainty.read(typed);
        if (!read.faults().isEmpty()) {
            return Reply.refused(read.faults());
        }
        Uncertainty unsure = read.uncertainty();
        Case asItIs = of(bid);
        Dollars price = bid.total();
        Simulation<Dollars> prices = unsure.prices(asItIs, runs, seed);
        List<String> out = new ArrayList<>(List.of(
                WORDS.get(
                        "what-if.priced",
                        String.format(Locale.ROOT, "%,d", runs),
                        seed,
                        unsure.depth().text(),
                        unsure.production().text(),
                        unsure.soil().text()),
                WORDS.get("what-if.what-your-own-rules")));
        List<List<String>> rows = new ArrayList<>();
        for (int share : List.of(10, 50, 80, 90)) {
            Dollars quantile = prices.quantile(share / 100.0);
            rows.add(List.of(
                    "  " + share + " of 100 jobs", "at most " + quantile.text(), signed(quantile.minus(price))));
        }
        out.addAll(TextColumns.of(rows));
        out.add(WORDS.get(
                "what-if.your-price", price.text(), String.format(Locale.ROOT, "%.0f", 100 * prices.above(price))));
        return Reply.done(out);
    }

    private static Case of(Bid bid) {
        return new Case(
                bid.dossier().job(), bid.dossier().company(), bid.dossier().book());
    }

    /** What both sides agreed beyond what the rules make of the work as it stands, as after a change order. */
    private static Sum beyond(Bid bid, Quote now) {
        Sum agreed = bid.dossier().contract().now();
        return new Sum(agreed.price().minus(now.price()), agreed.tax().minus(now.tax()));
    }

    private static List<List<String>> table(Map<String, Case> cases, Sum beyond) {
        Map<String, Quote> quotes = new LinkedHashMap<>();
        cases.forEach((name, one) -> quotes.put(name, one.quote()));
        Set<String> sections = new LinkedHashSet<>();
        quotes.values()
                .forEach(quote -> quote.sections()
                        .forEach(section -> sections.add(section.section().name())));
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("", quotes.keySet().stream().toList()));
        for (String section : sections) {
            rows.add(row(
                    section,
                    quotes.values().stream()
                            .map(quote -> section(quote, section).text())
                            .toList()));
        }
        rows.add(row(
                "Minimum",
                quotes.values().stream()
                        .map(quote -> quote.minimumTopUp().text())
                        .toList()));
        rows.add(row(
                "Sales tax",
                quotes.values().stream().map(quote -> quote.tax().text()).toList()));
        if (!beyond.total().isZero()) {
            rows.add(row(
                    WORDS.get("what-if.agreed-beyond"),
                    quotes.values().stream()
                            .map(quote -> signed(beyond.total()))
                            .toList()));
        }
        rows.add(row(
                "Total",
                quotes.values().stream()
                        .map(quote -> quote.total().plus(beyond.total()).text())
                        .toList()));
        Dollars now = quotes.get(AS_IT_IS).total();
        rows.add(row(
                WORDS.get("what-if.more-than-as"),
                quotes.values().stream().map(q -> signed(q.total().minus(now))).toList()));
        rows.add(row(
                "Direct cost",
                quotes.values().stream().map(quote -> direct(quote).text()).toList()));
        rows.add(row(
                "Left after overhead",
                quotes.entrySet().stream()
                        .map(one -> left(cases.get(one.getKey()), one.getValue(), beyond))
                        .toList()));
        rows.add(row("Crew hours", quotes.values().stream().map(WhatIf::hours).toList()));
        return rows;
    }

    private static List<String> row(String name, List<String> cells) {
        List<String> row = new ArrayList<>(List.of(name));
        row.addAll(cells);
        return row;
    }

    private static Dollars section(Quote quote, String name) {
        return Dollars.total(quote.sections().stream()
                .filter(section -> section.section().name().equals(name))
                .map(section -> section.price())
                .toList());
    }

    private static Dollars direct(Quote quote) {
        return Dollars.total(
                quote.lines().stream().map(line -> line.cost().direct()).toList());
    }

    private static String left(Case one, Quote quote, Sum beyond) {
        BigDecimal price = quote.price().plus(beyond.price()).amount();
        if (price.signum() == 0) {
            return "";
        }
        BigDecimal cost = Selling.withOverhead(
                        one.company().priceRules(), direct(quote).exact())
                .amount();
        return price.subtract(cost)
                        .divide(price, MathContext.DECIMAL64)
                        .movePointRight(2)
                        .setScale(1, RoundingMode.HALF_UP)
                + "%";
    }

    private static String hours(Quote quote) {
        return quote.lines().stream()
                        .map(PricedLine::crewHours)
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .setScale(1, RoundingMode.HALF_UP)
                + " h";
    }

    private static String signed(Dollars amount) {
        return amount.isNegative() || amount.isZero() ? amount.text() : "+" + amount.text();
    }
}
