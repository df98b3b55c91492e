// SPDX-License-Identifier: Apache-2.0
package spadework.feedback;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.job.Actual;
import spadework.job.AsBuilt;
import spadework.job.BuiltWall;
import spadework.measure.Quotient;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.pricing.Quote;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/**
 * What is on record of an item: what was written down for it, else what the record of the work tells.
 *
 * @param used material in the unit in which it is bought, where the record tells it: tons, gallons
 */
record Recorded(Actual actual, Optional<BigDecimal> used) {

    /**
     * All items of which something is on record. What was written down for an item in {@code actuals} goes first. For
     * the others:
     *
     * <ul>
     *   <li>stone: as much as would have been estimated to take the tons that were delivered, waste included; items
     *       that share the stone share it by their estimates;
     *   <li>truck loads: as many as were hauled;
     *   <li>coating: the area as built, with the gallons that went on, where every wall that it goes on has them.
     * </ul>
     *
     * @param built takeoff of the work as built
     */
    static List<Recorded> of(AsBuilt record, PriceBook book, Quote quote, Takeoff built) {
        Map<String, BigDecimal> used = new LinkedHashMap<>();
        Map<String, Actual> all = new LinkedHashMap<>();
        record.actuals().forEach(actual -> all.merge(actual.code(), actual, Recorded::together));
        Map<String, BigDecimal> estimated = new LinkedHashMap<>();
        quote.lines().forEach(line -> estimated.merge(line.code(), line.quantity(), BigDecimal::add));

        stone(record, book, estimated).forEach((code, tons) -> {
            used.put(code, tons);
            LineItem item = book.get(code);
            all.computeIfAbsent(code, absent -> actual(item, Quotient.of(tons, tonsEach(book, item))));
        });
        record.loads()
                .filter(loads -> loads > 0)
                .ifPresent(loads -> estimated.keySet().stream()
                        .map(book::get)
                        .filter(item -> item.follows().equals(Optional.of(Measure.HAUL_LOAD)))
                        .forEach(item ->
                                all.computeIfAbsent(item.code(), absent -> actual(item, BigDecimal.valueOf(loads)))));
        gallons(record, built).forEach((code, gallons) -> {
            used.put(code, gallons);
            all.computeIfAbsent(code, absent -> actual(book.get(code), area(code, built)));
        });
        return all.values().stream()
                .filter(actual -> actual.quantity().signum() > 0)
                .map(actual -> new Recorded(actual, Optional.ofNullable(used.get(actual.code()))))
                .toList();
    }

    /** An item that was written down in parts is one item. */
    private static Actual together(Actual a, Actual b) {
        return new Actual(
                a.code(),
                a.quantity().add(b.quantity()),
                a.unit(),
                a.hours()
                        .flatMap(hours -> b.hours().map(hours::add))
                        .or(a::hours)
                        .or(b::hours),
                a.material()
                        .flatMap(paid -> b.material().map(paid::plus))
                        .or(a::material)
                        .or(b::material));
    }

    private static Actual actual(LineItem item, BigDecimal quantity) {
        return new Actual(item.code(), quantity, item.unit(), Optional.empty(), Optional.empty());
    }

    /** The tons delivered, by the items that take them. */
    private static Map<String, BigDecimal> stone(AsBuilt record, PriceBook book, Map<String, BigDecimal> estimated) {
        Map<String, BigDecimal> tons = new LinkedHashMap<>();
        estimated.forEach((code, quantity) -> {
            if (isMeasured(book.get(code), Measure.STONE_TONS) && quantity.signum() > 0) {
                tons.put(code, quantity.multiply(tonsEach(book, book.get(code))));
            }
        });
        BigDecimal sum = tons.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal delivered =
                record.stone().map(stone -> BigDecimal.valueOf(stone.tons())).orElse(BigDecimal.ZERO);
        if (delivered.signum() == 0 || sum.signum() == 0) {
            return Map.of();
        }
        tons.replaceAll((code, estimate) -> Quotient.of(estimate.multiply(delivered), sum));
        return tons;
    }

    /** Tons that are bought for a unit of the item. */
    private static BigDecimal tonsEach(PriceBook book, LineItem item) {
        BigDecimal waste = item.material().orElseThrow().waste().fraction();
        return BigDecimal.valueOf(book.stoneTonsPerCubicYard()).multiply(BigDecimal.ONE.add(waste));
    }

    private static boolean isMeasured(LineItem item, Measure measure) {
        return item.material().flatMap(Material::measured).equals(Optional.of(measure));
    }

    /** The gallons that went on, by the items whose walls all have them on record. */
    private static Map<String, BigDecimal> gallons(AsBuilt record, Takeoff built) {
        Map<String, Optional<BigDecimal>> gallons = new LinkedHashMap<>();
        coats(built).forEach(line -> {
            Optional<BigDecimal> here = record.wall(line.section().label()).flatMap(BuiltWall::gallons);
            gallons.merge(line.code(), here, (a, b) -> a.flatMap(sum -> b.map(sum::add)));
        });
        Map<String, BigDecimal> known = new LinkedHashMap<>();
        gallons.forEach((code, sum) -> sum.ifPresent(amount -> known.put(code, amount)));
        return known;
    }

    private static BigDecimal area(String code, Takeoff built) {
        return coats(built).stream()
                .filter(line -> line.code().equals(code))
                .map(TakeoffLine::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<TakeoffLine> coats(Takeoff built) {
        return built.lines().stream()
                .filter(line -> line.from()
                        .filter(from -> from.measure() == Measure.COAT)
                        .isPresent())
                .toList();
    }
}
