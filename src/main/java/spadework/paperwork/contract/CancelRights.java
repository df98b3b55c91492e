// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import spadework.job.Signing;
import spadework.law.CancelRule;
import spadework.law.Cancellation;
import spadework.law.Deadline;
import spadework.law.StateRules;
import spadework.paperwork.Dossier;
import spadework.paperwork.PrintedDates;

/** The right to cancel in words: the number of days of the rule that ends last, and its day. */
public final class CancelRights {
    private CancelRights() {}

    static CancelTerms of(Dossier dossier, Signing signing) {
        int days = days(dossier, signing);
        Optional<LocalDate> last = SigningChecks.lastDay(signing.sale(), dossier.law());
        return new CancelTerms(
                dossier.terms().get("ordinal." + days),
                dossier.terms().get("days." + days),
                last.map(PrintedDates::words).orElse(""),
                signing.sale().on().map(PrintedDates::words).orElse(""),
                last.map(dossier.terms()::day).orElse(""),
                dossier.law()
                        .state()
                        .map(StateRules::cancel)
                        .filter(CancelRule::fromReceipt)
                        .isPresent(),
                ContractNotices.isFormApart(dossier));
    }

    /** Of rules that end on the same day the one with more days; while the day is open the one with the most days. */
    private static int days(Dossier dossier, Signing signing) {
        Optional<Integer> dated = signing.sale()
                .on()
                .flatMap(on ->
                        Cancellation.of(SigningChecks.signed(signing.sale(), on), dossier.law()).deadlines().stream()
                                .max(Comparator.comparing(Deadline::last).thenComparing(Deadline::days))
                                .map(Deadline::days));
        return dated.orElseGet(() -> dossier.law()
                .state()
                .map(StateRules::cancel)
                .map(rule -> Math.max(
                        Cancellation.FEDERAL_DAYS,
                        SigningChecks.signed(signing.sale(), LocalDate.EPOCH).days(rule)))
                .orElse(Cancellation.FEDERAL_DAYS));
    }
}
