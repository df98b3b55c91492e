// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.law.StateRules;
import spadework.law.release.ReleaseForm;
import spadework.law.release.ReleaseKind;
import spadework.money.Dollars;

/**
 * What a release says, worked out from the account: nobody picks whether it is conditional or final.
 *
 * @param invoice the bill up to which claims are released
 * @param amount what the release rests on: what came in for the bills up to that one once they are paid in full, or
 *     what is still to come for them
 * @param through the day up to which work is covered
 */
public record Release(ReleaseKind kind, Invoice invoice, Dollars amount, LocalDate through) {

    /**
     * The release for a bill as the account stands.
     *
     * @param cleared whether the bank has paid every check that came in; else a check is still to come, and the
     *     release waits for it
     */
    public static Release of(Ledger ledger, Invoice invoice, boolean cleared) {
        Dollars received = cleared ? ledger.received() : ledger.receivedWithoutChecks();
        Dollars billed = Dollars.ZERO;
        for (Invoice one : ledger.invoices()) {
            billed = billed.plus(one.amount());
            if (one.equals(invoice)) {
                break;
            }
        }
        boolean paid = !received.isLessThan(billed);
        int place = ledger.invoices().indexOf(invoice);
        boolean last = ledger.isWhollyBilled() && place == ledger.invoices().size() - 1;
        return new Release(ReleaseKind.of(last, paid), invoice, paid ? billed : billed.minus(received), invoice.on());
    }

    /**
     * What keeps it from being issued in a state whose rules are known: prescribed words that were not gathered.
     *
     * @param rules of the state of the house
     */
    public List<Finding> missing(StateRules rules) {
        return rules.release(kind).filter(form -> form.wording().isEmpty()).stream()
                .map(form -> unworded(form, rules.state()))
                .toList();
    }

    /**
     * What keeps any release from being issued in a state whose rules nobody has read.
     *
     * @param state two letters
     */
    public static Finding unread(String state) {
        return new Finding("release-state-unread", Severity.MUST, state, Map.of(), "the lien law of the state");
    }

    private static Finding unworded(ReleaseForm form, String state) {
        return new Finding(
                "release-unworded",
                Severity.MUST,
                state,
                new TreeMap<>(
                        Map.of("law", form.citation(), "release", form.release().words())),
                form.citation());
    }
}
