// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
import spadework.company.WorkCalendar;
import spadework.job.Accepted;
import spadework.job.Agreement;
import spadework.job.AsBuilt;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.job.Received;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.money.ExactDollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.contract.ContractNotices;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.PaymentRows;
import spadework.paperwork.work.MeasuredRows;
import spadework.paperwork.work.WaterDesignRows;
import spadework.pricebook.Material;
import spadework.pricing.PricedLine;
import spadework.pricing.PricedSection;
import spadework.pricing.Quote;
import spadework.pricing.Selling;
import spadework.takeoff.Purchase;
import spadework.working.Worked;

/** Puts the contractor's cost sheet together: the only paper that carries cost. */
public final class CostSheetPaper {
    private CostSheetPaper() {}

    /**
     * The cost sheet of a job.
     *
     * @param dossier of the agreed work
     * @param quote that work as it is priced today, with its cost
     */
    public static CostSheet of(Dossier dossier, Quote quote) {
        PriceRules rules = dossier.company().priceRules();
        Dollars direct = Dollars.total(
                quote.lines().stream().map(line -> line.cost().direct()).toList());
        CostPrice price = price(rules, quote, direct);
        Optional<AgreedMargin> agreed = AgreedMargins.of(dossier, quote);
        return new CostSheet(
                PaperHeads.of(dossier, day(dossier.job())),
                new CostBook(quote.bookTitle(), PrintedDates.words(quote.bookDate())),
                quote.lines().stream().map(CostSheetPaper::line).toList(),
                quote.sections().stream()
                        .map(section -> section(quote, section))
                        .toList(),
                buildUp(dossier, quote, direct),
                price,
                PaymentRows.of(dossier.terms(), dossier.contract().payments()),
                new CostSupplies(
                        dossier.takeoff().purchases().stream()
                                .map(purchase -> purchase(dossier, purchase))
                                .toList(),
                        crews(dossier, quote)),
                Stream.concat(
                                MeasuredRows.of(dossier.takeoff().quantities()).stream(),
                                new WaterDesignRows(dossier).figures().stream())
                        .toList(),
                new CostNotes(
                        FindingNotes.of(dossier, ContractNotices.missing(dossier)),
                        FindingNotes.all(dossier),
                        dossier.job().notes()),
                agreed,
                new AskedWork(dossier, quote)
                        .unpriced(
                                agreed.map(AgreedMargin::left).orElse(price.left()),
                                agreed.map(AgreedMargin::price).orElse(price.price())));
    }

    /** The day of the sheet: the last day of all that it tells of, from the issue of the proposal to the closing. */
    static LocalDate day(Job job) {
        Agreement agreement = job.agreement();
        return Stream.of(
                        Stream.of(job.issued(), AgreedParts.day(job)),
                        agreement.accepted().map(Accepted::on).stream(),
                        agreement.received().stream().map(Received::on),
                        agreement.asBuilt().flatMap(AsBuilt::finished).stream(),
                        job.closed().map(Closed::completed).stream())
                .flatMap(days -> days)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static CostBuildUp buildUp(Dossier dossier, Quote quote, Dollars direct) {
        PriceRules rules = dossier.company().priceRules();
        return new CostBuildUp(
                direct,
                quote.buildUp().stream()
                        .map(step -> step(dossier.terms(), step))
                        .toList(),
                rules.contingency().fraction(),
                rules.overhead().fraction(),
                rules.profit().fraction(),
                rules.basis() == ProfitBasis.MARGIN,
                rules.step().amount(),
                quote.minimumTopUp());
    }

    private static CostPrice price(PriceRules rules, Quote quote, Dollars direct) {
        Dollars cost = Selling.withOverhead(rules, direct.exact()).toCents(RoundingMode.HALF_UP);
        return new CostPrice(
                quote.price(),
                quote.tax(),
                quote.total(),
                quote.price().minus(cost),
                margin(rules, direct, quote.price()));
    }

    private static CostSheetLine line(PricedLine line) {
        return new CostSheetLine(
                line.code(),
                line.name(),
                line.section().name(),
                new LineAmount(line.quantity(), line.unit().symbol(), Figures.counted(line.quantity(), line.unit())),
                line.reason(),
                new LineParts(
                        line.cost().material(),
                        line.cost().purchaseTax(),
                        line.cost().labor(),
                        line.cost().machine(),
                        line.cost().subcontract(),
                        line.cost().disposal(),
                        line.cost().direct()),
                line.crew(),
                line.crewHours().setScale(2, RoundingMode.HALF_UP),
                line.unitPrice(),
                line.price());
    }

    private static CostSheetSection section(Quote quote, PricedSection section) {
        Dollars direct = Dollars.total(quote.lines().stream()
                .filter(line -> line.section().equals(section.section()))
                .map(line -> line.cost().direct())
                .toList());
        return new CostSheetSection(
                section.section().name(), direct, section.lines(), section.rounding(), section.price());
    }

    private static PriceStep step(PaperWords terms, Worked step) {
        BigDecimal cents = step.value().setScale(2, RoundingMode.HALF_UP);
        return new PriceStep(
                terms.get("step." + step.symbol()),
                step.formula(),
                step.figures(),
                cents,
                ExactDollars.of(cents).toCents(RoundingMode.UNNECESSARY).text());
    }

    /** What is left of the price after cost, contingency and overhead, as a share of the price. */
    private static String margin(PriceRules rules, Dollars direct, Dollars price) {
        if (price.isZero()) {
            return "";
        }
        BigDecimal cost = Selling.withOverhead(rules, direct.exact()).amount();
        BigDecimal share = price.amount().subtract(cost).divide(price.amount(), MathContext.DECIMAL64);
        return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP) + "%";
    }

    private static PurchaseRow purchase(Dossier dossier, Purchase purchase) {
        var item = dossier.book().get(purchase.code());
        Unit unit = item.material().orElseThrow().unit();
        String waste = purchase.working().inputs().stream()
                .filter(input -> input.symbol().startsWith("w"))
                .map(input ->
                        input.value().movePointRight(2).stripTrailingZeros().toPlainString() + "%")
                .distinct()
                .collect(Collectors.joining(", "));
        return new PurchaseRow(
                purchase.code(),
                item.name(),
                Figures.withUnit(purchase.net(), unit),
                waste,
                purchase.packages(),
                purchase.sold(),
                purchase.working().line(),
                stock(dossier, purchase));
    }

    /** What the company's rule lets the job not pay of what is left over. */
    private static Optional<PurchaseRow.Stock> stock(Dossier dossier, Purchase purchase) {
        Material material = dossier.book().get(purchase.code()).material().orElseThrow();
        BigDecimal over = purchase.packages().subtract(purchase.needed());
        BigDecimal carried = BigDecimal.ONE.subtract(
                dossier.company().priceRules().leftovers().jobBears().fraction());
        if (over.signum() <= 0 || carried.signum() == 0) {
            return Optional.empty();
        }
        return Optional.of(new PurchaseRow.Stock(
                Figures.withUnit(over.multiply(material.holds()), material.unit()),
                material.cost().exact().times(over.multiply(carried)).toCents(RoundingMode.HALF_UP)));
    }

    private static List<CrewRow> crews(Dossier dossier, Quote quote) {
        Map<String, BigDecimal> hours = new LinkedHashMap<>();
        for (PricedLine line : quote.lines()) {
            if (!line.crew().isEmpty()) {
                hours.merge(line.crew(), line.crewHours(), BigDecimal::add);
            }
        }
        BigDecimal hoursPerDay =
                dossier.company().calendar().orElse(WorkCalendar.USUAL).hoursPerDay();
        List<CrewRow> rows = new ArrayList<>();
        hours.forEach((crew, sum) -> rows.add(new CrewRow(
                crew,
                dossier.company().crews().get(crew).stream()
                        .map(place -> (place.count() > 1 ? place.count() + " × " : "") + place.wage())
                        .collect(Collectors.joining(", ")),
                sum.setScale(1, RoundingMode.HALF_UP),
                sum.divide(hoursPerDay, 1, RoundingMode.UP))));
        return rows;
    }
}
