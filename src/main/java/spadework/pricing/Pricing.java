// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spadework.company.Company;
import spadework.company.PriceRules;
import spadework.company.TaxMode;
import spadework.job.Job;
import spadework.money.Dollars;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffSection;

/** From a takeoff to a quote. */
public final class Pricing {
    private Pricing() {}

    /**
     * Prices a job. Sections are rounded once, half up, to the company's step; the price is the sum of what is
     * printed, raised to the small-job minimum where it falls short.
     *
     * @param book the book as this job uses it, see {@link PriceBook#changedBy}
     */
    public static Quote of(Job job, Company company, PriceBook book, Takeoff takeoff) {
        List<LineCost> costs = LineCost.of(company, book, takeoff);
        List<UnitPrice> unitPrices = new LazyList<>(() -> UnknownPrices.of(job, company, book, costs));
        return of(job, company, book, takeoff, costs, unitPrices);
    }

    /** The same without unit prices for the unknown, which take most of the time; for looking across many bids. */
    public static Quote known(Job job, Company company, PriceBook book, Takeoff takeoff) {
        return of(job, company, book, takeoff, LineCost.of(company, book, takeoff), List.of());
    }

    private static Quote of(
            Job job,
            Company company,
            PriceBook book,
            Takeoff takeoff,
            List<LineCost> costs,
            List<UnitPrice> unitPrices) {
        PriceRules rules = company.priceRules();
        List<PricedLine> lines = LinePricing.of(company, costs);
        List<PricedSection> sections = sections(takeoff, lines, rules);
        Dollars sum = Dollars.total(sections.stream().map(PricedSection::price).toList());
        Dollars topUp = sum.isLessThan(rules.minimum()) ? rules.minimum().minus(sum) : Dollars.ZERO;
        Dollars price = sum.plus(topUp);
        Dollars tax = company.tax().mode() == TaxMode.ON_PRICE
                ? SalesTax.on(price, company.tax().rate())
                : Dollars.ZERO;
        Dollars total = price.plus(tax);
        return new Quote(
                book.title(),
                book.dated(),
                lines,
                sections,
                topUp,
                price,
                tax,
                total,
                BuildUp.of(rules, lines, price),
                unitPrices,
                Installments.of(total, job.payments()));
    }

    /** The price of the work alone: the printed section prices, before minimum and tax. */
    public static List<SectionPrice> work(Company company, PriceBook book, Takeoff takeoff) {
        return sections(takeoff, LinePricing.of(company, book, takeoff), company.priceRules()).stream()
                .map(section -> new SectionPrice(section.section(), section.price()))
                .toList();
    }

    private static List<PricedSection> sections(Takeoff takeoff, List<PricedLine> lines, PriceRules rules) {
        Map<TakeoffSection, List<Dollars>> bySection = new HashMap<>();
        lines.forEach(line -> bySection
                .computeIfAbsent(line.section(), section -> new ArrayList<>())
                .add(line.price()));
        List<PricedSection> sections = new ArrayList<>();
        for (TakeoffSection section : takeoff.sections()) {
            List<Dollars> prices = bySection.getOrDefault(section, List.of());
            if (!prices.isEmpty()) {
                Dollars exact = Dollars.total(prices);
                Dollars printed = exact.exact().toStep(rules.step(), RoundingMode.HALF_UP);
                sections.add(new PricedSection(section, exact, printed.minus(exact), printed));
            }
        }
        return sections;
    }
}
