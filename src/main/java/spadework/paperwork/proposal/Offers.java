// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spadework.contract.IssueDifference;
import spadework.contract.PricedOption;
import spadework.contract.Revision;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Job;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.SectionNames;
import spadework.paperwork.part.PriceRows;
import spadework.paperwork.part.UnitPriceRow;
import spadework.paperwork.work.AlteredWorks;
import spadework.paperwork.work.QuantityChangeRows;
import spadework.pricing.UnitPrice;
import spadework.schedule.DayQuantities;
import spadework.takeoff.Purchase;

/** What may be chosen, and what moved since the proposal was issued before. */
public final class Offers {
    private Offers() {}

    static Offer of(Dossier dossier) {
        List<OptionOffer> options = dossier.contract().options().stream()
                .map(option -> option(dossier, option))
                .toList();
        return new Offer(
                dossier.revision().map(Revision::number).orElse(0),
                dossier.revision().flatMap(Revision::moved).map(moved -> since(dossier, moved)),
                options,
                options.stream().anyMatch(option -> !option.tax().isZero()));
    }

    private static OptionOffer option(Dossier dossier, PricedOption priced) {
        Dollars total = priced.sum().total();
        return new OptionOffer(
                priced.option().label(),
                priced.option().title(),
                priced.option().why(),
                AlteredWorks.of(dossier, priced.option().alteration()),
                QuantityChangeRows.plain(priced.quantities(), dossier.terms()),
                priced.sum().price(),
                priced.sum().tax(),
                total,
                total.isNegative() ? Dollars.ZERO.minus(total) : total,
                usesLeftover(dossier, priced.option().alteration()));
    }

    /** Whether fewer packages come with it than it needs, because the job alone does not use up all of its own. */
    private static boolean usesLeftover(Dossier dossier, Alteration added) {
        Map<String, Purchase> alone =
                dossier.takeoff().purchases().stream().collect(Collectors.toMap(Purchase::code, purchase -> purchase));
        Job with = Altered.of(dossier.job(), added);
        return DayQuantities.takeoff(with, dossier.company(), dossier.book()).purchases().stream()
                .anyMatch(purchase -> alone.containsKey(purchase.code())
                        && purchase.needed()
                                        .compareTo(alone.get(purchase.code()).needed())
                                > 0
                        && purchase.packages()
                                        .subtract(alone.get(purchase.code()).packages())
                                        .compareTo(purchase.needed()
                                                .subtract(alone.get(purchase.code())
                                                        .needed()))
                                < 0);
    }

    private static SinceLastIssue since(Dossier dossier, IssueDifference moved) {
        return new SinceLastIssue(
                dossier.terms().day(moved.since()),
                moved.before(),
                moved.after(),
                moved.sections().stream()
                        .map(move -> new SinceLastIssue.SectionDifference(
                                SectionNames.of(dossier.terms(), move.name()),
                                move.before(),
                                move.after(),
                                move.difference()))
                        .toList(),
                moved.options().stream()
                        .map(move -> new SinceLastIssue.PromiseDifference(
                                move.promised().option().label(),
                                move.promised().option().title(),
                                "",
                                move.before(),
                                move.after()))
                        .toList(),
                moved.unitPrices().stream()
                        .map(move -> unitPrice(PriceRows.unitPrice(dossier, move.promised()), move))
                        .toList(),
                QuantityChangeRows.plain(moved.quantities(), dossier.terms()),
                moved.fromWork(),
                moved.fromPrices());
    }

    private static SinceLastIssue.PromiseDifference unitPrice(
            UnitPriceRow row, IssueDifference.PromiseMove<UnitPrice> move) {
        return new SinceLastIssue.PromiseDifference("", row.name(), row.unit(), move.before(), move.after());
    }
}
