package spadework.paperwork;

import java.util.List;
import spadework.contract.Moved;
import spadework.contract.PricedOption;
import spadework.contract.Revision;
import spadework.money.Dollars;

/** What may be chosen, and what moved since the proposal was issued before. */
final class Offers {
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
                QuantityMoves.plain(priced.quantities(), dossier.terms()),
                priced.sum().price(),
                priced.sum().tax(),
                total,
                total.isNegative() ? Dollars.ZERO.minus(total) : total);
    }

    private static Since since(Dossier dossier, Moved moved) {
        return new Since(
                Dates.words(moved.since()),
                moved.before(),
                moved.after(),
                moved.sections().stream()
                        .map(move -> new Since.Row(move.name(), move.before(), move.after(), move.difference()))
                        .toList(),
                QuantityMoves.plain(moved.quantities(), dossier.terms()));
    }
}
