// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import spadework.company.Company;
import spadework.job.Accepted;
import spadework.job.Agreed;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Change;
import spadework.job.ChangeState;
import spadework.job.Decision;
import spadework.job.Job;
import spadework.job.Option;
import spadework.job.UnitCount;
import spadework.money.Dollars;
import spadework.pricebook.PriceBook;
import spadework.pricing.Installments;
import spadework.pricing.OfferedPrice;
import spadework.pricing.Quote;
import spadework.pricing.UnitPrice;
import spadework.schedule.MeasuredStages;
import spadework.schedule.ScheduledTakeoff;

/** From a priced job to its contract. */
public final class Contracting {
    private final Job job;
    private final Company company;
    private final MeasuredStages stages;
    private final OfferedPrice proposed;
    private final SealedFigures sealed;
    private final IdentityHashMap<ScheduledTakeoff, WorkPrice> known = new IdentityHashMap<>();

    private Contracting(Job job, MeasuredStages stages, OfferedPrice proposed, SealedFigures sealed) {
        this.job = job;
        this.company = stages.company();
        this.stages = stages;
        this.proposed = proposed;
        this.sealed = sealed;
    }

    /**
     * Prices options and change orders.
     *
     * @param job as the file has it
     * @param company the contractor, as when the job was accepted
     * @param book the book of that day, with the job's own price changes
     * @param proposed the quote of the job without options
     * @throws IllegalArgumentException if a change names a unit price that the quote does not have; see {@link
     *     #unknownPrices}
     */
    public static Contract of(Job job, Company company, PriceBook book, Quote proposed) {
        return of(job, new MeasuredStages(company, book), proposed, SealedFigures.NONE);
    }

    /**
     * The same where figures are signed: they take the place of what is figured.
     *
     * @param stages what is measured of this job so far
     * @param sealed what the register has of the contract and its changes
     */
    public static Contract of(Job job, MeasuredStages stages, Quote proposed, SealedFigures sealed) {
        return new Contracting(job, stages, sealed.offered(proposed.offered()), sealed).contract();
    }

    /** The unit prices that change orders name and the quote does not have, or has in another unit. */
    public static List<UnitCount> unknownPrices(Job job, Quote proposed) {
        return job.agreement().changes().stream()
                .flatMap(change -> change.unitPrices().stream())
                .filter(count -> proposed.unitPrices().stream()
                        .noneMatch(price -> price.code().equals(count.price()) && price.unit() == count.unit()))
                .toList();
    }

    private Contract contract() {
        List<PricedOption> options = options();
        Sum taken = Sum.of(options.stream()
                .filter(PricedOption::taken)
                .map(PricedOption::sum)
                .toList());
        OfferedPrice standing = sealed.total()
                .map(total -> SealedFigures.comingTo(proposed, total.minus(taken.total())))
                .orElse(proposed);
        Sum contracted = new Sum(standing.price(), standing.tax()).plus(taken);
        List<PricedChange> changes = new ArrayList<>();
        Dollars price = contracted.total();
        for (Change change : job.agreement().changes()) {
            PricedChange priced = priced(change, price);
            changes.add(priced);
            price = change.state() == ChangeState.ACCEPTED ? priced.after() : price;
        }
        return new Contract(
                standing, options, sealed.payments(Installments.of(contracted.total(), job.payments())), changes);
    }

    private List<PricedOption> options() {
        List<PricedOption> options = new ArrayList<>();
        if (job.agreement().options().isEmpty()) {
            return options;
        }
        List<String> taken = job.agreement().accepted().map(Accepted::options).orElse(List.of());
        WorkPrice without = work(job);
        for (Option option : job.agreement().options()) {
            WorkPrice with = work(Altered.of(job, option.alteration()));
            options.add(new PricedOption(
                    option,
                    sealed.option(option.label(), without.to(with, company)),
                    QuantityChanges.between(without.takeoff(), with.takeoff()),
                    taken.contains(option.label())));
        }
        return options;
    }

    private PricedChange priced(Change change, Dollars before) {
        Job agreed = Agreed.before(job, change.number());
        WorkPrice without = work(agreed);
        WorkPrice with = work(Altered.of(agreed, change.alteration()));
        Sum byPath = without.to(with, company);
        FittingPrices fitting = change.unitPrices().isEmpty()
                ? FittingPrices.of(agreed, change.alteration(), proposed.unitPrices())
                : new FittingPrices(change.unitPrices(), Alteration.NONE);
        List<UnitLine> lines = fitting.counts().stream().map(this::line).toList();
        Dollars rest = lines.isEmpty() || fitting.rest().equals(Alteration.NONE)
                ? Dollars.ZERO
                : without.to(work(Altered.of(agreed, fitting.rest())), company).price();
        Sum figured = lines.isEmpty()
                ? byPath
                : WorkPrice.taxed(
                        Dollars.total(lines.stream().map(UnitLine::amount).toList())
                                .plus(rest),
                        company);
        Sum agreedSum = change.state() == ChangeState.ACCEPTED
                ? sealed.change(change.number())
                        .orElseGet(() -> change.decision()
                                .map(Decision::price)
                                .map(signed -> signed(signed, figured))
                                .orElse(figured))
                : figured;
        return new PricedChange(
                change,
                before,
                figured,
                agreedSum,
                before.plus(agreedSum.total()),
                lines,
                rest,
                byPath,
                QuantityChanges.between(without.takeoff(), with.takeoff()),
                IssueDifference.moves(without.sections(), with.sections()),
                UnfitWalls.of(agreed, fitting.rest(), proposed.unitPrices()));
    }

    private WorkPrice work(Job stage) {
        return known.computeIfAbsent(stages.of(stage), measured -> WorkPrice.of(measured.takeoff(), stages));
    }

    /** The signed price stands; what differs from the figured one is price, not tax. */
    private static Sum signed(Dollars total, Sum figured) {
        return new Sum(total.minus(figured.tax()), figured.tax());
    }

    private UnitLine line(UnitCount count) {
        Optional<UnitPrice> price = proposed.unitPrices().stream()
                .filter(known -> known.code().equals(count.price()) && known.unit() == count.unit())
                .findFirst();
        UnitPrice known = price.orElseThrow(() -> new IllegalArgumentException("no unit price " + count.price()));
        return new UnitLine(
                known,
                count.quantity(),
                known.price().exact().times(count.quantity()).toCents(RoundingMode.HALF_UP));
    }
}
