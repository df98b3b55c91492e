// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;

/** The findings that cost most: first what no line pays for, then what the price carries. */
final class CostRisks {
    private static final int MOST = 5;

    private CostRisks() {}

    static List<CostRisk> of(Dossier dossier, Quote quote) {
        Map<String, CostRisk> byItem = new LinkedHashMap<>();
        Stream.concat(dossier.findings().contract().stream(), dossier.findings().site().stream())
                .forEach(finding -> add(byItem, finding, dossier, quote));
        return byItem.values().stream()
                .sorted(Comparator.comparing(CostRisk::priced)
                        .thenComparing(risk -> risk.amount().amount(), Comparator.reverseOrder()))
                .limit(MOST)
                .toList();
    }

    /** Several findings may ask for the same work: it is told once, at the first of them. */
    private static void add(Map<String, CostRisk> byItem, Finding finding, Dossier dossier, Quote quote) {
        String carried = finding.values().get("paidBy");
        String item = finding.values().get("unpaid");
        String asks = finding.values().get("asks");
        String what = dossier.phrases().what(finding);
        if (carried != null) {
            String code = carried.split(",", 2)[0];
            Dollars price = Dollars.total(quote.lines().stream()
                    .filter(line -> line.code().equals(code))
                    .map(PricedLine::price)
                    .toList());
            byItem.putIfAbsent(carried, new CostRisk(what, carried, price, true));
        } else if (item != null && asks != null) {
            byItem.putIfAbsent(item, new CostRisk(what, item, Dollars.of(asks.replaceAll("[$,]", "")), false));
        }
    }
}
