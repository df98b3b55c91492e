// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spadework.contract.UnfitWall.Difference;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.job.Water;
import spadework.money.Dollars;
import spadework.pricing.UnitPrice;

/** Tells of added walls why no price for one more foot of wall fits them: a homeowner who was promised one will ask. */
final class UnfitWalls {
    private UnfitWalls() {}

    static List<UnfitWall> of(Job agreed, Alteration alteration, List<UnitPrice> prices) {
        List<Wall> named = agreed.walls().stream()
                .filter(wall -> prices.stream().anyMatch(price -> isFootOf(price, wall)))
                .toList();
        List<UnfitWall> unfit = new ArrayList<>();
        for (Wall wall : alteration.walls()) {
            boolean isNew = agreed.walls().stream().noneMatch(old -> old.label().equals(wall.label()));
            Optional<Wall> nearest = named.stream()
                    .min(Comparator.comparingInt(
                            one -> FittingPrices.differences(wall, one).size()));
            if (isNew && nearest.isPresent()) {
                unfit.add(new UnfitWall(
                        wall.label(),
                        nearest.get().label(),
                        differences(agreed, alteration, wall, nearest.get()),
                        wall.length(),
                        byTheFoot(prices, nearest.get(), wall)));
            }
        }
        return unfit;
    }

    private static Dollars byTheFoot(List<UnitPrice> prices, Wall named, Wall wall) {
        UnitPrice foot = prices.stream()
                .filter(price -> isFootOf(price, named))
                .findFirst()
                .orElseThrow();
        return foot.price()
                .exact()
                .times(BigDecimal.valueOf(wall.length().feet()))
                .toCents(RoundingMode.HALF_UP);
    }

    private static Set<Difference> differences(Job agreed, Alteration alteration, Wall wall, Wall named) {
        Set<Difference> differences = EnumSet.noneOf(Difference.class);
        differences.addAll(FittingPrices.differences(wall, named));
        Water after = Altered.of(agreed, alteration).water();
        if (FittingPrices.isDrained(agreed.water(), named.label()) != FittingPrices.isDrained(after, wall.label())) {
            differences.add(Difference.DRAIN);
        }
        return differences.isEmpty() ? EnumSet.of(Difference.OTHER_WORK) : differences;
    }

    private static boolean isFootOf(UnitPrice price, Wall wall) {
        return UnitPrice.wallKey(price).filter("wall-foot"::equals).isPresent()
                && price.homeowner().equals(wall.label());
    }
}
