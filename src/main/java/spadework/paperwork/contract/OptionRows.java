// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.contract.PricedOption;
import spadework.contract.QuantityChange;
import spadework.paperwork.Dossier;
import spadework.paperwork.work.WallWorks;

/** The options as the contract lists them. */
public final class OptionRows {
    private OptionRows() {}

    static List<OptionRow> of(Dossier dossier) {
        return dossier.contract().options().stream()
                .map(option -> row(dossier, option))
                .toList();
    }

    private static OptionRow row(Dossier dossier, PricedOption option) {
        return new OptionRow(
                option.option().label(),
                option.option().title(),
                option.option().why(),
                option.sum().total(),
                state(dossier.job().agreement().accepted().isPresent(), option),
                new WallWorks(dossier).of(option.option().alteration().walls()),
                option.quantities().stream().map(OptionRows::move).toList());
    }

    private static String state(boolean decided, PricedOption option) {
        if (!decided) {
            return "open";
        }
        return option.taken() ? "taken" : "declined";
    }

    private static OptionRow.Move move(QuantityChange change) {
        String sign = change.difference().signum() > 0 ? "+" : "";
        return new OptionRow.Move(
                change.label(),
                change.measure().trade(),
                sign + change.difference().toPlainString() + " " + change.unit().symbol());
    }
}
