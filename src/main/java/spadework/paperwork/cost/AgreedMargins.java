// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.contract.PricedOption;
import spadework.job.Change;
import spadework.job.UnitCount;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.pricing.Quote;
import spadework.pricing.Selling;

/** The agreed price of an accepted job beside its cost. */
public final class AgreedMargins {
    private AgreedMargins() {}

    /** Empty until the job is accepted. */
    static Optional<AgreedMargin> of(Dossier agreed, Quote quote) {
        return agreed.job().agreement().accepted().map(yes -> price(agreed, quote));
    }

    private static AgreedMargin price(Dossier agreed, Quote quote) {
        Contract contract = agreed.contract();
        List<AgreedMargin.Part> parts = new ArrayList<>();
        for (PricedOption option : contract.taken()) {
            parts.add(part(
                    option.option().label() + ", " + option.option().title(),
                    option.sum().price(),
                    option.sum().price()));
        }
        for (PricedChange change : contract.accepted()) {
            parts.add(part(
                    name(agreed, change.change()),
                    change.agreed().price(),
                    change.figured().price()));
        }
        Dollars price = contract.now().price();
        Dollars cost = Selling.withOverhead(
                        agreed.company().priceRules(),
                        Dollars.total(quote.lines().stream()
                                        .map(line -> line.cost().direct())
                                        .toList())
                                .exact())
                .toCents(RoundingMode.HALF_UP);
        Dollars left = price.minus(cost);
        return new AgreedMargin(
                contract.proposed().price(),
                parts,
                contract.contracted().total(),
                contract.proposed()
                        .price()
                        .plus(Dollars.total(
                                parts.stream().map(AgreedMargin.Part::figured).toList())),
                price,
                contract.now().tax(),
                contract.total(),
                cost,
                left,
                price.isZero() ? "" : share(left, price),
                contract.accepted().stream()
                        .map(PricedChange::change)
                        .filter(AgreedMargins::isWallWithoutWork)
                        .map(change -> name(agreed, change))
                        .toList());
    }

    /** A foot of wall that is charged, and no wall of the change is longer, deeper or new. */
    private static boolean isWallWithoutWork(Change change) {
        return change.unitPrices().stream().anyMatch(UnitCount::isOfWall)
                && change.alteration().walls().isEmpty();
    }

    private static String name(Dossier agreed, Change change) {
        return agreed.terms().get("change.name", "number", Integer.toString(change.number()), "title", change.title());
    }

    private static AgreedMargin.Part part(String name, Dollars agreed, Dollars figured) {
        return new AgreedMargin.Part(name, agreed, figured, agreed.minus(figured));
    }

    /** A share of a price above or below zero, in percent to a tenth. */
    static String share(Dollars left, Dollars price) {
        return left.amount()
                        .divide(price.amount(), MathContext.DECIMAL64)
                        .movePointRight(2)
                        .setScale(1, RoundingMode.HALF_UP)
                + "%";
    }
}
