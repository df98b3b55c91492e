// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spadework.company.Company;
import spadework.company.TaxMode;
import spadework.job.Actual;
import spadework.job.AsBuilt;
import spadework.job.Job;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.money.ExactDollars;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.pricing.CrewHour;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;
import spadework.takeoff.NetMaterial;
import spadework.takeoff.Takeoff;

/**
 * Actual against estimate on one job, item by item.
 *
 * @param finished last day of the work
 * @param soil texture and water of the soil, in words, to judge whether jobs are alike
 */
public record JobVariances(String number, String title, LocalDate finished, String soil, List<Variance> items) {

    public JobVariances {
        items = List.copyOf(items);
    }

    /**
     * Splits what each recorded item really took.
     *
     * @param job the agreed work with what was built
     * @param book as this job uses it
     * @param quote of the agreed work
     * @param built takeoff of the work as built
     * @return empty where nothing is on record
     */
    public static Optional<JobVariances> of(Job job, Company company, PriceBook book, Quote quote, Takeoff built) {
        return job.agreement()
                .finishedWork()
                .map(record -> of(
                        job,
                        record,
                        Recorded.of(record, book, quote, built).stream()
                                .map(one -> new Split(company, book, quote, one).variance())
                                .toList()))
                .filter(one -> !one.items().isEmpty());
    }

    private static JobVariances of(Job job, AsBuilt record, List<Variance> items) {
        String soil = (job.site().soil().texture() + ", " + job.site().soil().seepage())
                .toLowerCase(Locale.ROOT)
                .replace('_', ' ');
        return new JobVariances(job.number(), job.title(), record.finished().orElseThrow(), soil, items);
    }

    /** The split of one item. */
    private static final class Split {
        private final LineItem item;
        private final BigDecimal netEach;
        private final Actual actual;
        private final Optional<ExactDollars> usedAtBook;
        private final List<PricedLine> lines;
        private final Optional<ExactDollars> crewHour;

        private Split(Company company, PriceBook book, Quote quote, Recorded recorded) {
            this.item = book.get(recorded.actual().code());
            this.netEach = NetMaterial.of(book, item, BigDecimal.ONE);
            this.actual = recorded.actual();
            this.usedAtBook = recorded.used().flatMap(used -> atBook(company, used));
            this.lines = quote.lines().stream()
                    .filter(line -> line.code().equals(item.code()))
                    .toList();
            this.crewHour = item.labor().map(labor -> CrewHour.of(company, labor));
        }

        private Variance variance() {
            BigDecimal quantity = sum(lines.stream().map(PricedLine::quantity).toList());
            BigDecimal hours = sum(lines.stream().map(PricedLine::crewHours).toList());
            Dollars labor = total(lines.stream()
                    .map(l -> l.cost().labor().plus(l.cost().machine()))
                    .toList());
            Dollars material = total(lines.stream()
                    .map(l -> l.cost().material().plus(l.cost().purchaseTax()))
                    .toList());
            Dollars others = total(lines.stream()
                    .map(l -> l.cost().subcontract().plus(l.cost().disposal()))
                    .toList());
            Dollars estimate = labor.plus(material).plus(others);

            Dollars laborThere = atActual(labor, quantity, laborEach());
            Dollars materialThere = atActual(material, quantity, materialEach());
            Dollars othersThere = atActual(others, quantity, othersEach());
            Dollars there = laborThere.plus(materialThere).plus(othersThere);

            Dollars laborCame = actual.hours().isPresent() && crewHour.isPresent()
                    ? crewHour.get().times(actual.hours().get()).toCents(RoundingMode.HALF_UP)
                    : laborThere;
            Dollars materialCame = actual.material()
                    .or(() -> usedAtBook.map(cost -> cost.toCents(RoundingMode.HALF_UP)))
                    .orElse(materialThere);
            return new Variance(
                    item.code(),
                    item.name(),
                    item.unit(),
                    new Variance.Quantities(quantity, actual.quantity()),
                    new Variance.Hours(hours, actual.hours(), perHour(quantity, hours)),
                    new Variance.Costs(estimate, laborCame.plus(materialCame).plus(othersThere), actual.material()),
                    new Variance.Errors(
                            there.minus(estimate), laborCame.minus(laborThere), materialCame.minus(materialThere)),
                    new Variance.Purchases(
                            factor(materialCame, materialThere), item.material().map(Material::cost)));
        }

        /** An estimated cost for the actual quantity; by the book where nothing was estimated. */
        private Dollars atActual(Dollars estimated, BigDecimal quantity, ExactDollars each) {
            ExactDollars there = quantity.signum() > 0
                    ? estimated.exact().times(actual.quantity()).dividedBy(quantity)
                    : each.times(actual.quantity());
            return there.toCents(RoundingMode.HALF_UP);
        }

        /** What was used of the material at the book's price, with the tax that the contractor pays on it. */
        private Optional<ExactDollars> atBook(Company company, BigDecimal used) {
            Percent tax =
                    company.tax().mode() == TaxMode.ON_PURCHASES ? company.tax().rate() : Percent.ZERO;
            return item.material()
                    .map(m -> m.cost().exact().plusPercent(tax).times(used).dividedBy(m.holds()));
        }

        private ExactDollars laborEach() {
            return item.labor()
                    .map(labor -> crewHour.get().dividedBy(labor.perHour()))
                    .orElse(ExactDollars.ZERO);
        }

        private ExactDollars materialEach() {
            return item.material()
                    .map(m -> m.cost()
                            .exact()
                            .plusPercent(m.waste())
                            .times(netEach)
                            .dividedBy(m.holds()))
                    .orElse(ExactDollars.ZERO);
        }

        private ExactDollars othersEach() {
            return item.subcontract()
                    .orElse(Dollars.ZERO)
                    .plus(item.disposal().orElse(Dollars.ZERO))
                    .exact();
        }

        /** Quantity ÷ hours, times what conditions slowed it down by as estimated: hours × production ÷ quantity. */
        private Optional<BigDecimal> perHour(BigDecimal quantity, BigDecimal hours) {
            Optional<Labor> labor = item.labor();
            if (labor.isEmpty() || actual.hours().filter(h -> h.signum() > 0).isEmpty()) {
                return Optional.empty();
            }
            BigDecimal slowed = quantity.signum() > 0 && hours.signum() > 0
                    ? hours.multiply(labor.get().perHour()).divide(quantity, MathContext.DECIMAL64)
                    : BigDecimal.ONE;
            return Optional.of(
                    actual.quantity().multiply(slowed).divide(actual.hours().get(), MathContext.DECIMAL64));
        }

        private Optional<BigDecimal> factor(Dollars came, Dollars there) {
            return actual.material().isPresent() && !there.isZero()
                    ? Optional.of(came.amount().divide(there.amount(), MathContext.DECIMAL64))
                    : Optional.empty();
        }

        private static BigDecimal sum(List<BigDecimal> values) {
            return values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        private static Dollars total(List<Dollars> amounts) {
            return Dollars.total(new ArrayList<>(amounts));
        }
    }
}
