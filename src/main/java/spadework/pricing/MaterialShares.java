package spadework.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spadework.money.Dollars;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Purchase;
import spadework.takeoff.TakeoffLine;

/**
 * What each line bears of what is ordered for the whole job, by its net quantity. Whole cents; the shares of an item
 * add to the cost of its packages exactly.
 */
final class MaterialShares {
    private final Map<String, Dollars> ordered = new HashMap<>();
    private final Map<String, BigDecimal> net = new HashMap<>();
    private final Map<String, BigDecimal> soFar = new HashMap<>();
    private final Map<String, Dollars> borneSoFar = new HashMap<>();

    MaterialShares(PriceBook book, List<Purchase> purchases) {
        for (Purchase purchase : purchases) {
            Material material = book.get(purchase.code()).material().orElseThrow();
            Dollars cost = material.cost().exact().times(purchase.packages()).toCents(RoundingMode.UNNECESSARY);
            ordered.put(purchase.code(), cost);
            net.put(purchase.code(), purchase.net());
        }
    }

    /** The share of the next line; lines are asked for once each, in order. */
    Dollars next(TakeoffLine line) {
        if (line.bought().isEmpty() || net.get(line.code()).signum() == 0) {
            return Dollars.ZERO;
        }
        BigDecimal before = soFar.getOrDefault(line.code(), BigDecimal.ZERO);
        BigDecimal after = before.add(line.bought().get());
        soFar.put(line.code(), after);
        Dollars borne = upTo(line.code(), after);
        Dollars earlier = borneSoFar.getOrDefault(line.code(), Dollars.ZERO);
        borneSoFar.put(line.code(), borne);
        return borne.minus(earlier);
    }

    private Dollars upTo(String code, BigDecimal quantity) {
        return ordered.get(code).exact().times(quantity).dividedBy(net.get(code), RoundingMode.HALF_UP);
    }
}
