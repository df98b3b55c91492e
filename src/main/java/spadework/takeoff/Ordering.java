// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.measure.Percent;
import spadework.measure.Quotient;
import spadework.measure.Unit;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** What to order: net material of each item over the whole job, waste once, then whole packages. */
public final class Ordering {
    private Ordering() {}

    static List<Purchase> purchases(PriceBook book, List<TakeoffLine> lines) {
        Map<String, List<TakeoffLine>> byCode = new LinkedHashMap<>();
        for (TakeoffLine line : lines) {
            if (line.bought().isPresent()) {
                byCode.computeIfAbsent(line.code(), code -> new ArrayList<>()).add(line);
            }
        }
        return byCode.entrySet().stream()
                .map(entry -> purchase(book.get(entry.getKey()), entry.getValue(), Sources.of(book)))
                .toList();
    }

    private static Purchase purchase(LineItem item, List<TakeoffLine> lines, String source) {
        Material material = item.material().orElseThrow();
        Map<Percent, BigDecimal> netByWaste = new LinkedHashMap<>();
        for (TakeoffLine line : lines) {
            netByWaste.merge(line.waste().orElseThrow(), line.bought().orElseThrow(), BigDecimal::add);
        }
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        BigDecimal needed = BigDecimal.ZERO;
        BigDecimal net = BigDecimal.ZERO;
        for (Map.Entry<Percent, BigDecimal> entry : netByWaste.entrySet()) {
            int n = inputs.size() / 2 + 1;
            BigDecimal share = entry.getKey().fraction();
            inputs.add(new Listed("N" + n, "net", entry.getValue(), material.unit(), "takeoff"));
            inputs.add(new Listed("w" + n, "waste", share, Unit.NONE, source));
            formula.append(formula.isEmpty() ? "" : " + ").append("N" + n + " × (1 + w" + n + ")");
            needed = needed.add(entry.getValue().multiply(BigDecimal.ONE.add(share)));
            net = net.add(entry.getValue());
        }
        inputs.add(new Listed("h", "holds", material.holds(), material.unit(), source));
        double packages =
                WholePackages.roundUp(needed.doubleValue() / material.holds().doubleValue());
        Worked working = Worked.of(
                "n",
                material.sold(),
                packages,
                Unit.EACH,
                new Formula("ceil((" + formula + ") ÷ h)", "waste once, then whole packages"),
                inputs.toArray(Working[]::new));
        return new Purchase(
                item.code(),
                net,
                Quotient.of(needed, material.holds()),
                BigDecimal.valueOf((long) packages),
                material.sold(),
                working);
    }
}
