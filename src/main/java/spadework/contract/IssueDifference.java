// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import spadework.money.Dollars;
import spadework.pricing.OfferedPrice;
import spadework.pricing.SectionPrice;
import spadework.pricing.UnitPrice;
import spadework.takeoff.Takeoff;

/**
 * What moved between two issues of a proposal, in money and in scope.
 *
 * @param since date of the issue before
 * @param before its total
 * @param after the total now
 * @param sections the section prices that differ
 * @param options the options that came, went, or have another price
 * @param unitPrices the unit prices that came, went, or moved
 * @param quantities the measured quantities that differ
 * @param repriced what the issue before would come to at the prices and rules of now; empty where nobody knows
 */
public record IssueDifference(
        LocalDate since,
        Dollars before,
        Dollars after,
        List<SectionMove> sections,
        List<PromiseMove<PricedOption>> options,
        List<PromiseMove<UnitPrice>> unitPrices,
        List<QuantityChange> quantities,
        Optional<Dollars> repriced) {

    /**
     * What one issue of a proposal offers.
     *
     * @param price sections, total and unit prices
     * @param options what may be chosen beside it
     * @param measured the quantities it rests on
     */
    public record IssuedOffer(OfferedPrice price, List<PricedOption> options, Takeoff measured) {
        public IssuedOffer {
            options = List.copyOf(options);
        }
    }

    /** A section whose price differs; zero where it was not there, or is there no more. */
    public record SectionMove(String name, Dollars before, Dollars after) {

        /** After less before. */
        public Dollars difference() {
            return after.minus(before);
        }
    }

    /**
     * A price promised for later, an option's or a unit price, that is not what it was.
     *
     * @param promised as it stands now; as it stood where it is no longer offered
     * @param before empty where it was not offered
     * @param after empty where it is no longer
     */
    public record PromiseMove<T>(T promised, Optional<Dollars> before, Optional<Dollars> after) {}

    public IssueDifference {
        sections = List.copyOf(sections);
        options = List.copyOf(options);
        unitPrices = List.copyOf(unitPrices);
        quantities = List.copyOf(quantities);
    }

    /** Compares two issues. */
    public static IssueDifference between(LocalDate since, IssuedOffer then, IssuedOffer now) {
        return new IssueDifference(
                since,
                then.price().total(),
                now.price().total(),
                moves(then.price().sections(), now.price().sections()),
                promises(then.options(), now.options(), PricedOption::label, PricedOption::total),
                promises(then.price().unitPrices(), now.price().unitPrices(), UnitPrice::code, UnitPrice::price),
                QuantityChanges.between(then.measured(), now.measured()),
                Optional.empty());
    }

    /** The same, where it is known what the issue before comes to at the prices of now. */
    public IssueDifference withRepriced(Dollars total) {
        return new IssueDifference(since, before, after, sections, options, unitPrices, quantities, Optional.of(total));
    }

    /** What changed prices make of the difference, the work being as it was. */
    public Optional<Dollars> fromPrices() {
        return repriced.map(total -> total.minus(before));
    }

    /** What the changed work makes of the difference, at the prices of now. */
    public Optional<Dollars> fromWork() {
        return repriced.map(after::minus);
    }

    /** What moved among promises that are told apart by a name, in the order of the later ones. */
    private static <T> List<PromiseMove<T>> promises(
            List<T> then, List<T> now, Function<T, String> name, Function<T, Dollars> price) {
        Map<String, T> gone = new LinkedHashMap<>();
        then.forEach(promise -> gone.put(name.apply(promise), promise));
        List<PromiseMove<T>> moves = new ArrayList<>();
        for (T promise : now) {
            Optional<Dollars> was =
                    Optional.ofNullable(gone.remove(name.apply(promise))).map(price);
            Optional<Dollars> is = Optional.of(price.apply(promise));
            if (!was.equals(is)) {
                moves.add(new PromiseMove<>(promise, was, is));
            }
        }
        gone.values()
                .forEach(promise ->
                        moves.add(new PromiseMove<>(promise, Optional.of(price.apply(promise)), Optional.empty())));
        return moves;
    }

    /** The sections whose prices differ, in the order of the later ones. */
    static List<SectionMove> moves(List<SectionPrice> then, List<SectionPrice> now) {
        Map<String, Dollars> gone = new LinkedHashMap<>();
        then.forEach(section -> gone.put(section.section().name(), section.price()));
        List<SectionMove> moves = new ArrayList<>();
        for (SectionPrice section : now) {
            String name = section.section().name();
            Dollars was = gone.containsKey(name) ? gone.remove(name) : Dollars.ZERO;
            if (!was.equals(section.price())) {
                moves.add(new SectionMove(name, was, section.price()));
            }
        }
        gone.forEach((name, was) -> moves.add(new SectionMove(name, was, Dollars.ZERO)));
        return moves;
    }
}
