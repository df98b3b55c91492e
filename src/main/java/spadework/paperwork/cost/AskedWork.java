// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.measure.Figures;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.pricebook.LineItem;
import spadework.pricing.ItemPrice;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;
import spadework.pricing.Selling;
import spadework.takeoff.Quantity;
import spadework.takeoff.TakeoffLine;

/**
 * Work that findings ask for, each line item once for the whole job, whatever the number of walls and outlets at which
 * it was found.
 */
final class AskedWork {
    private static final int MOST = 5;
    private static final int TOLD = 2;

    private final Dossier dossier;
    private final Quote quote;
    private final Map<String, List<Finding>> paid = new LinkedHashMap<>();
    private final Map<String, List<Finding>> unpaid = new LinkedHashMap<>();

    AskedWork(Dossier dossier, Quote quote) {
        this.dossier = dossier;
        this.quote = quote;
        Stream.concat(dossier.findings().contract().stream(), dossier.findings().site().stream())
                .forEach(finding -> {
                    put(paid, finding.values().get("paidBy"), finding);
                    put(unpaid, finding.values().get("unpaid"), finding);
                });
    }

    private static void put(Map<String, List<Finding>> byItem, String item, Finding finding) {
        if (item != null) {
            byItem.computeIfAbsent(item, name -> new ArrayList<>()).add(finding);
        }
    }

    /** The work that costs most: first what no line pays for, then what the price carries. */
    List<CostRisk> most() {
        List<CostRisk> all = new ArrayList<>();
        unpaid.forEach((item, asking) -> asked(asking)
                .ifPresent(amount -> all.add(new CostRisk(what(asking), withTakes(item, asking), amount, false))));
        paid.forEach((item, asking) -> all.add(carried(item, asking)));
        return all.stream()
                .sorted(Comparator.comparing(CostRisk::priced)
                        .thenComparing(risk -> risk.amount().amount(), Comparator.reverseOrder()))
                .limit(MOST)
                .toList();
    }

    /**
     * What no line pays for; empty where every finding has its line.
     *
     * @param left what the price leaves before it
     * @param price of the job before sales tax
     */
    Optional<UnpricedWork> unpriced(Dollars left, Dollars price) {
        if (unpaid.isEmpty()) {
            return Optional.empty();
        }
        Dollars asked = Dollars.total(
                unpaid.values().stream().flatMap(all -> asked(all).stream()).toList());
        Dollars direct = Dollars.total(
                unpaid.values().stream().flatMap(all -> direct(all).stream()).toList());
        Dollars cost = Selling.withOverhead(dossier.company().priceRules(), direct.exact())
                .toCents(RoundingMode.HALF_UP);
        Dollars rest = left.minus(cost);
        return Optional.of(new UnpricedWork(
                items(true), asked, cost, rest, price.isZero() ? "" : AgreedMargins.share(rest, price), items(false)));
    }

    private List<String> items(boolean known) {
        return unpaid.entrySet().stream()
                .filter(entry -> asked(entry.getValue()).isPresent() == known)
                .map(entry -> withTakes(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static String withTakes(String item, List<Finding> asking) {
        return item + ", " + asking.get(0).values().get("takes");
    }

    /** What the book would ask, as the finding says it. */
    private static Optional<Dollars> asked(List<Finding> asking) {
        return Optional.ofNullable(asking.get(0).values().get("asks"))
                .map(text -> Dollars.of(text.replaceAll("[$,]", "")));
    }

    private Optional<Dollars> direct(List<Finding> asking) {
        Map<String, String> values = asking.get(0).values();
        Optional<LineItem> item = dossier.book().find(code(values.get("unpaid")));
        return item.filter(known -> values.containsKey("count"))
                .map(known -> ItemPrice.direct(
                        known, new BigDecimal(values.get("count")), dossier.company(), dossier.book()));
    }

    private CostRisk carried(String item, List<Finding> asking) {
        List<String> codes =
                Arrays.stream(item.split("; ")).map(AskedWork::code).toList();
        List<TakeoffLine> own = own(asking);
        List<PricedLine> lines = quote.lines().stream()
                .filter(line -> codes.contains(line.code()))
                .filter(line -> own.isEmpty() || own.stream().anyMatch(one -> isLine(one, line)))
                .toList();
        Dollars price = Dollars.total(lines.stream().map(PricedLine::price).toList());
        String much = lines.stream()
                .filter(line -> line.code().equals(codes.get(0)))
                .map(PricedLine::quantity)
                .reduce(BigDecimal::add)
                .map(sum -> ", " + Figures.withUnit(sum, lines.get(0).unit()))
                .orElse("");
        return new CostRisk(what(asking), item + much, price, true);
    }

    /** The lines of what was measured for these findings alone; none where no finding names one. */
    private List<TakeoffLine> own(List<Finding> asking) {
        Set<String> places = asking.stream()
                .flatMap(finding -> Optional.ofNullable(finding.values().get("paidFor")).stream())
                .collect(Collectors.toSet());
        return dossier.takeoff().lines().stream()
                .filter(line -> line.from()
                        .map(Quantity::label)
                        .filter(places::contains)
                        .isPresent())
                .toList();
    }

    private static boolean isLine(TakeoffLine one, PricedLine line) {
        return one.code().equals(line.code())
                && one.section().equals(line.section())
                && one.quantity().compareTo(line.quantity()) == 0;
    }

    private static String code(String item) {
        return item.split(",", 2)[0];
    }

    /** Each thing that was found once, the first of them in words and the others counted. */
    private String what(List<Finding> asking) {
        List<String> notes = FindingNotes.of(dossier, asking).stream()
                .map(FindingNote::what)
                .distinct()
                .toList();
        String told = notes.stream().limit(TOLD).collect(Collectors.joining(" "));
        return notes.size() <= TOLD
                ? told
                : told + " " + dossier.terms().get("risk.more", "count", Integer.toString(notes.size() - TOLD));
    }
}
