// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Accepted;
import spadework.job.AsBuilt;
import spadework.job.Change;
import spadework.job.Job;
import spadework.job.Owners;
import spadework.job.Received;
import spadework.job.Sale;
import spadework.job.Signature;
import spadework.job.Signing;
import spadework.law.Cancellation;
import spadework.law.HouseLaw;
import spadework.paperwork.PrintedDates;

/** Whether the right people signed, in the right way, and whether anything happened before it might. */
public final class SigningChecks {
    private static final String CANCEL = "16 CFR 429.0(a)(3), 429.1";
    private static final String PRACTICE = "common practice, no source";

    private SigningChecks() {}

    static List<Finding> of(Job job, HouseLaw law) {
        List<Finding> found = new ArrayList<>();
        job.agreement().signing().map(Signing::sale).ifPresent(sale -> start(job, sale, law, found));
        job.agreement().accepted().ifPresent(yes -> {
            signed(job, "", yes.by(), yes.signatures(), found);
            paid(job, yes, found);
        });
        for (Change change : job.agreement().acceptedChanges()) {
            change.decision()
                    .ifPresent(decision -> signed(
                            job, Integer.toString(change.number()), decision.by(), decision.signatures(), found));
        }
        return found;
    }

    /** The last day to cancel: of all rules the latest. Empty while the day of signing is open. */
    static Optional<LocalDate> lastDay(Sale sale, HouseLaw law) {
        return sale.on().map(on -> Cancellation.of(signed(sale, on), law).lastDay());
    }

    /** How it was, or will be, signed on a day. */
    static Cancellation.Signed signed(Sale sale, LocalDate on) {
        return new Cancellation.Signed(on, sale.received(), sale.oldestAge(), sale.afterDisaster());
    }

    private static void start(Job job, Sale sale, HouseLaw law, List<Finding> found) {
        boolean fromReceipt =
                law.state().map(rules -> rules.cancel().fromReceipt()).orElse(false);
        if (fromReceipt && sale.received().isEmpty()) {
            found.add(new Finding(
                    "copy-day-unknown",
                    Severity.MUST,
                    job.site().address().state(),
                    Map.of(),
                    law.state().get().cancelCitation()));
        }
        boolean longer =
                law.state().flatMap(rules -> rules.cancel().disasterDays()).isPresent();
        if (longer && sale.afterDisaster().isEmpty()) {
            found.add(new Finding(
                    "disaster-unsaid",
                    Severity.MUST,
                    job.site().address().state(),
                    Map.of(
                            "days",
                            law.state().get().cancel().disasterDays().get().toString()),
                    law.state().get().cancelCitation()));
        }
        Optional<LocalDate> last = lastDay(sale, law);
        LocalDate start = job.agreement()
                .asBuilt()
                .map(AsBuilt::started)
                .orElse(job.schedule().earliestStart());
        if (last.isPresent() && !start.isAfter(last.get()) && !sale.isWaived()) {
            found.add(new Finding(
                    "start-inside-cancellation",
                    Severity.STOP,
                    job.site().address().state(),
                    Map.of("start", PrintedDates.words(start), "last", PrintedDates.words(last.get())),
                    CANCEL));
        }
    }

    private static void signed(
            Job job, String paper, List<String> by, List<Signature> signatures, List<Finding> found) {
        List<String> missing = Owners.missing(job, by);
        if (!missing.isEmpty()) {
            found.add(new Finding(
                    "owner-not-signed",
                    Severity.STOP,
                    paper,
                    Map.of("paper", name(paper), "owners", String.join(" and ", missing)),
                    PRACTICE));
        }
        List<String> strangers = Owners.strangers(job, by);
        if (!strangers.isEmpty()) {
            found.add(new Finding(
                    "signer-stranger",
                    Severity.STOP,
                    paper,
                    Map.of("paper", name(paper), "names", String.join(" and ", strangers)),
                    PRACTICE));
        }
        if (signatures.stream().anyMatch(Signature::lacksConsent)) {
            found.add(new Finding(
                    "consent-incomplete", Severity.MUST, paper, Map.of("paper", name(paper)), "15 USC 7001(c)"));
        }
    }

    /** Nothing is taken before the contract is signed: the contract says so, and some states forbid it by name. */
    private static void paid(Job job, Accepted yes, List<Finding> found) {
        for (Received payment : job.agreement().received()) {
            if (payment.on().isBefore(yes.on())) {
                found.add(new Finding(
                        "paid-before-signing",
                        Severity.MUST,
                        payment.on().toString(),
                        Map.of(
                                "amount", payment.amount().text(),
                                "on", PrintedDates.words(payment.on()),
                                "signed", PrintedDates.words(yes.on())),
                        "Md. Bus. Reg. 8-617 and like rules; the contract's own words"));
            }
        }
    }

    private static String name(String change) {
        return change.isEmpty() ? "the contract" : "change order " + change;
    }
}
