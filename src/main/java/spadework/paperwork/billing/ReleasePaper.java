// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.time.LocalDate;
import java.util.Optional;
import spadework.billing.Release;
import spadework.law.release.ReleaseForm;
import spadework.law.release.ReleaseWording;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.PaperHeads;

/** Puts a release together. */
public final class ReleasePaper {
    private static final ReleaseWording NONE = new ReleaseWording("", "", "", "", "");

    private ReleasePaper() {}

    /**
     * A release.
     *
     * @param number its own
     * @param contract number of the contract
     * @param on the day that it carries
     * @throws java.util.NoSuchElementException if the state prescribes words that were not gathered
     */
    public static ReleaseSheet of(Dossier dossier, String number, String contract, Release release, LocalDate on) {
        Optional<ReleaseForm> form = dossier.law().state().flatMap(rules -> rules.release(release.kind()));
        return new ReleaseSheet(
                PaperHeads.of(dossier, on),
                number,
                new ReleaseSheet.Kind(
                        release.kind().isConditional(), release.kind().isFinal()),
                contract,
                release.invoice().number(),
                dossier.terms().day(release.through()),
                release.amount(),
                dossier.contract().accepted().stream()
                        .map(change -> change.change().number() + ", "
                                + change.change().title())
                        .toList(),
                form.isPresent() ? form.get().wording().orElseThrow() : NONE,
                form.map(ReleaseForm::citation).orElse(""));
    }
}
