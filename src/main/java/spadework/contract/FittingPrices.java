// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.contract.UnfitWall.Difference;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.UnitCount;
import spadework.job.Wall;
import spadework.job.Water;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricing.UnitPrice;

/**
 * What of an alteration the contract's unit prices cover: what was promised for more wall, more depth and the unknown
 * is charged by that price, and only the rest by the path of the job.
 *
 * @param counts what is charged by unit prices; empty where none fits
 * @param rest what is left to price
 */
record FittingPrices(List<UnitCount> counts, Alteration rest) {
    private static final double STEP_FEET = 0.5;
    private static final double NOISE = 1e-9;

    FittingPrices {
        counts = List.copyOf(counts);
    }

    /** Looks an alteration of the agreed job through. */
    static FittingPrices of(Job agreed, Alteration alteration, List<UnitPrice> prices) {
        List<UnitCount> counts = new ArrayList<>();
        List<ExtraItem> items = new ArrayList<>();
        for (ExtraItem item : alteration.items()) {
            Optional<UnitCount> count = item(item, prices);
            count.ifPresent(counts::add);
            if (count.isEmpty()) {
                items.add(item);
            }
        }
        List<UnitCount> walls = walls(agreed, alteration, prices);
        counts.addAll(walls);
        return new FittingPrices(counts, rest(alteration, items, !walls.isEmpty()));
    }

    private static Optional<UnitCount> item(ExtraItem item, List<UnitPrice> prices) {
        return prices.stream()
                .filter(price -> price.code().equals(item.code()))
                .findFirst()
                .flatMap(price -> item.quantity().map(much -> new UnitCount(price.code(), much, price.unit())));
    }

    /** All walls of the alteration by unit prices; empty where one of them does not fit, or a drain goes elsewhere. */
    private static List<UnitCount> walls(Job agreed, Alteration alteration, List<UnitPrice> prices) {
        Set<String> labels = new HashSet<>();
        agreed.walls().forEach(wall -> labels.add(wall.label()));
        alteration.walls().forEach(wall -> labels.add(wall.label()));
        boolean drained = alteration.drains().stream().allMatch(drain -> labels.containsAll(drain.along()));
        if (!drained
                || !alteration.takenAway().walls().isEmpty()
                || !alteration.takenAway().pipes().isEmpty()) {
            return List.of();
        }
        List<UnitCount> counts = new ArrayList<>();
        for (Wall wall : alteration.walls()) {
            Optional<UnitCount> count = wall(agreed, alteration, wall, prices);
            if (count.isEmpty()) {
                return List.of();
            }
            counts.add(count.get());
        }
        return counts;
    }

    private static Optional<UnitCount> wall(Job agreed, Alteration alteration, Wall wall, List<UnitPrice> prices) {
        Optional<Wall> before = agreed.walls().stream()
                .filter(old -> old.label().equals(wall.label()))
                .findFirst();
        if (before.isEmpty()) {
            return price(agreed, wall, prices, "wall-foot")
                    .filter(price -> isDrained(agreed.water(), price.homeowner())
                            == isDrained(Altered.of(agreed, alteration).water(), wall.label()))
                    .map(price -> feet(price, wall.length().feet()));
        }
        Wall old = before.get();
        if (!wall.asBuilt(old.length(), old.depthStart(), old.depthEnd()).equals(old)) {
            return Optional.empty();
        }
        double longer = wall.length().minus(old.length()).feet();
        double deeper = wall.depthStart().minus(old.depthStart()).feet();
        boolean evenly = Math.abs(wall.depthEnd().minus(old.depthEnd()).feet() - deeper) < NOISE;
        if (evenly && Math.abs(deeper) < NOISE && Math.abs(longer) > NOISE) {
            return price(agreed, old, prices, "wall-foot").map(price -> feet(price, longer));
        }
        double steps = Math.rint(deeper / STEP_FEET);
        boolean whole = steps >= 1 && Math.abs(deeper - steps * STEP_FEET) < NOISE;
        return evenly && whole && Math.abs(longer) < NOISE
                ? price(agreed, old, prices, "wall-deeper")
                        .map(price -> feet(price, steps * old.length().feet()))
                : Optional.empty();
    }

    private static Optional<UnitPrice> price(Job agreed, Wall wall, List<UnitPrice> prices, String key) {
        return prices.stream()
                .filter(price -> UnitPrice.wallKey(price).filter(key::equals).isPresent())
                .filter(price -> agreed.walls().stream()
                        .filter(named -> named.label().equals(price.homeowner()))
                        .anyMatch(named -> named.label().equals(wall.label()) || isLike(wall, named)))
                .findFirst();
    }

    /** Built, footed, covered and dug alike, its depth within the 6 in that the contract leaves open. */
    private static boolean isLike(Wall wall, Wall named) {
        return differences(wall, named).isEmpty();
    }

    /** What keeps a wall from being like another. */
    static Set<Difference> differences(Wall wall, Wall named) {
        Map<Difference, Boolean> differs = new EnumMap<>(Difference.class);
        differs.put(Difference.KIND, wall.kind() != named.kind());
        differs.put(Difference.FOOTING, !wall.footing().isAsLargeAs(named.footing()));
        differs.put(Difference.FINISH, !wall.finish().equals(named.finish()));
        differs.put(Difference.DIGGING, !wall.digging().equals(named.digging()));
        differs.put(
                Difference.OLD_SURFACE,
                !wall.strip().equals(named.strip())
                        || wall.condition().surface() != named.condition().surface());
        differs.put(Difference.WINDOW_WELLS, wall.windowWells() != 0);
        double deeper = mean(wall) - mean(named);
        double deepest = wall.deepest().minus(named.deepest()).feet();
        differs.put(Difference.DEEPER, Math.max(deeper, deepest) > STEP_FEET + NOISE);
        differs.put(Difference.SHALLOWER, deeper < -STEP_FEET - NOISE);
        Set<Difference> found = EnumSet.noneOf(Difference.class);
        differs.forEach((difference, is) -> {
            if (is) {
                found.add(difference);
            }
        });
        return found;
    }

    static boolean isDrained(Water water, String wall) {
        return water.drains().stream().anyMatch(drain -> drain.along().contains(wall));
    }

    private static double mean(Wall wall) {
        return wall.depthStart().plus(wall.depthEnd()).feet() / 2;
    }

    private static UnitCount feet(UnitPrice price, double feet) {
        BigDecimal quantity =
                Figures.printed(BigDecimal.valueOf(Length.ofFeet(feet).feet()), Unit.FOOT);
        return new UnitCount(price.code(), quantity, price.unit());
    }

    private static Alteration rest(Alteration a, List<ExtraItem> items, boolean wallsFit) {
        return new Alteration(
                wallsFit ? List.of() : a.walls(),
                a.finishes(),
                wallsFit ? List.of() : a.corners(),
                wallsFit ? List.of() : a.drains(),
                a.mains(),
                a.roofLines(),
                a.downspouts(),
                a.outlets(),
                items,
                a.restoration(),
                a.takenAway());
    }
}
