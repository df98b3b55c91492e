// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spadework.company.Leftovers;
import spadework.money.Dollars;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Purchase;
import spadework.takeoff.TakeoffLine;

/**
 * What each line bears of what the whole job pays for material, by its net quantity. Whole cents; the shares of an item
 * add to that exactly. The job pays for what net and waste take, and of what is left over of whole packages the share
 * that the company's rule says.
 */
final class MaterialShares {
    private final Map<String, Dollars> paid = new HashMap<>();
    private final Map<String, BigDecimal> net = new HashMap<>();
    private final Map<String, BigDecimal> soFar = new HashMap<>();
    private final Map<String, Dollars> borneSoFar = new HashMap<>();

    MaterialShares(PriceBook book, List<Purchase> purchases, Leftovers leftovers) {
        for (Purchase purchase : purchases) {
            Material material = book.get(purchase.code()).material().orElseThrow();
            paid.put(
                    purchase.code(),
                    material.cost().exact().times(paid(purchase, leftovers)).toCents(RoundingMode.HALF_UP));
            net.put(purchase.code(), purchase.net());
        }
    }

    /** Packages that the job pays for: all of them where it bears what is left over. */
    private static BigDecimal paid(Purchase purchase, Leftovers leftovers) {
        BigDecimal over = purchase.packages().subtract(purchase.needed()).max(BigDecimal.ZERO);
        BigDecimal companyBears = BigDecimal.ONE.subtract(leftovers.jobBears().fraction());
        return purchase.packages().subtract(over.multiply(companyBears));
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
        return paid.get(code).exact().times(quantity).dividedBy(net.get(code), RoundingMode.HALF_UP);
    }
}
