// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.contract.PricedOption;
import spadework.paperwork.Dossier;
import spadework.paperwork.work.AlteredWorks;

/** The options as the contract lists them. */
public final class OptionRows {
    private OptionRows() {}

    /** @param proposed the papers of the job without any option: what an option does is told from there */
    static List<OptionRow> of(Dossier dossier, Dossier proposed) {
        return dossier.contract().options().stream()
                .map(option -> row(dossier, proposed, option))
                .toList();
    }

    private static OptionRow row(Dossier dossier, Dossier proposed, PricedOption option) {
        return new OptionRow(
                option.option().label(),
                option.option().title(),
                option.option().why(),
                option.sum().total(),
                state(dossier.job().agreement().accepted().isPresent(), option),
                AlteredWorks.of(proposed, option.option().alteration()));
    }

    private static String state(boolean decided, PricedOption option) {
        if (!decided) {
            return "open";
        }
        return option.taken() ? "taken" : "declined";
    }
}
