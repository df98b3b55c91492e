// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.money.Dollars;
import spadework.pricing.Due;
import spadework.pricing.OfferedPrice;
import spadework.pricing.SectionPrice;
import spadework.pricing.UnitPrice;

/**
 * The prices that were signed, as the register has them sealed. They stand whatever a later program or book would make
 * of the same job.
 *
 * @param figures by name, in dollars: {@code total}, {@code proposed.price}, {@code section.…} and so on; a contract
 *     that was sealed before they were kept one by one has its total alone
 * @param changes what each accepted change order added, by its number
 */
public record SealedFigures(Map<String, Dollars> figures, Map<Integer, Sum> changes) {
    /** Nothing is signed. */
    public static final SealedFigures NONE = new SealedFigures(Map.of(), Map.of());

    /** The contract price with the options taken and any tax. */
    public static final String TOTAL = "total";

    private static final String PRICE = ".price";
    private static final String TAX = ".tax";
    private static final String PROPOSED = "proposed";
    private static final String MINIMUM = "minimum";
    private static final String SECTION = "section.";
    private static final String UNIT = "unit.";
    private static final String OPTION = "option.";
    private static final String PAYMENT = "payment.";

    public SealedFigures {
        figures = Map.copyOf(figures);
        changes = Map.copyOf(changes);
    }

    /** The figures of a contract, by the names under which they are sealed. */
    public static Map<String, Dollars> of(Contract contract) {
        Map<String, Dollars> all = new LinkedHashMap<>();
        all.put(TOTAL, contract.contracted().total());
        put(
                all,
                PROPOSED,
                new Sum(contract.proposed().price(), contract.proposed().tax()));
        all.put(MINIMUM, contract.proposed().minimumTopUp());
        contract.proposed()
                .sections()
                .forEach(section -> all.put(SECTION + section.section().name(), section.price()));
        contract.proposed().unitPrices().forEach(price -> all.put(UNIT + price.code(), price.price()));
        contract.options().forEach(option -> put(all, OPTION + option.option().label(), option.sum()));
        for (int i = 0; i < contract.payments().size(); i++) {
            all.put(PAYMENT + (i + 1), contract.payments().get(i).amount());
        }
        return all;
    }

    private static void put(Map<String, Dollars> all, String name, Sum sum) {
        all.put(name + PRICE, sum.price());
        all.put(name + TAX, sum.tax());
    }

    /** Whether a name is that of a sealed figure. */
    public static boolean isFigure(String name) {
        return name.equals(TOTAL)
                || name.equals(MINIMUM)
                || name.startsWith(PROPOSED + ".")
                || name.startsWith(SECTION)
                || name.startsWith(UNIT)
                || name.startsWith(OPTION)
                || name.startsWith(PAYMENT);
    }

    /** The signed contract price; empty where nothing is signed. */
    public Optional<Dollars> total() {
        return figure(TOTAL);
    }

    /** What a change order added; empty where it is not accepted. */
    public Optional<Sum> change(int number) {
        return Optional.ofNullable(changes.get(number));
    }

    /** The price of the job as proposed with every figure that is sealed. */
    OfferedPrice offered(OfferedPrice figured) {
        Optional<Sum> sum = sum(PROPOSED);
        if (sum.isEmpty()) {
            return figured;
        }
        return new OfferedPrice(
                figured.bookTitle(),
                figured.bookDate(),
                figured.sections().stream().map(this::section).toList(),
                figure(MINIMUM).orElse(figured.minimumTopUp()),
                sum.get().price(),
                sum.get().tax(),
                sum.get().total(),
                figured.unitPrices().stream().map(this::unitPrice).toList(),
                figured.payments());
    }

    /** A price that comes to a signed total, of which the single figures are not known. */
    static OfferedPrice comingTo(OfferedPrice price, Dollars total) {
        return new OfferedPrice(
                price.bookTitle(),
                price.bookDate(),
                price.sections(),
                price.minimumTopUp(),
                total.minus(price.tax()),
                price.tax(),
                total,
                price.unitPrices(),
                price.payments());
    }

    private SectionPrice section(SectionPrice figured) {
        return new SectionPrice(
                figured.section(), figure(SECTION + figured.section().name()).orElse(figured.price()));
    }

    private UnitPrice unitPrice(UnitPrice figured) {
        return figure(UNIT + figured.code())
                .map(price -> new UnitPrice(figured.code(), figured.name(), figured.homeowner(), figured.unit(), price))
                .orElse(figured);
    }

    /** What an option adds. */
    Sum option(String label, Sum figured) {
        return sum(OPTION + label).orElse(figured);
    }

    /** The contract price in installments as they were signed. */
    List<Due> payments(List<Due> figured) {
        List<Due> signed = new ArrayList<>();
        for (int i = 0; i < figured.size(); i++) {
            Due due = figured.get(i);
            signed.add(new Due(
                    due.when(),
                    due.share(),
                    due.atSigning(),
                    figure(PAYMENT + (i + 1)).orElse(due.amount())));
        }
        return signed;
    }

    private Optional<Dollars> figure(String name) {
        return Optional.ofNullable(figures.get(name));
    }

    private Optional<Sum> sum(String name) {
        return figure(name + PRICE)
                .map(price -> new Sum(price, figure(name + TAX).orElse(Dollars.ZERO)));
    }
}
