// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.util.List;
import spadework.closeout.Account;
import spadework.contract.PricedChange;
import spadework.job.Accepted;
import spadework.job.Closed;
import spadework.job.Decision;
import spadework.job.Job;
import spadework.job.Received;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;

/** The final account as the papers print it. */
public final class FinalAccounts {
    private FinalAccounts() {}

    static FinalAccount of(Dossier dossier) {
        Job job = dossier.job();
        Account account = Account.of(dossier.contract(), job.agreement().received());
        return new FinalAccount(
                job.agreement()
                        .accepted()
                        .map(Accepted::on)
                        .map(dossier.terms()::day)
                        .orElse(""),
                job.agreement().accepted().map(Accepted::options).orElse(List.of()),
                account.contract(),
                account.changes().stream()
                        .map(change -> change(dossier.terms(), change))
                        .toList(),
                account.total(),
                account.received().stream()
                        .map(received -> received(dossier.terms(), received))
                        .toList(),
                account.paid(),
                account.balance(),
                account.balance().isNegative() ? Dollars.ZERO.minus(account.balance()) : Dollars.ZERO,
                job.closed().flatMap(Closed::balanceWaived).orElse(""));
    }

    private static AccountRow change(PaperWords terms, PricedChange change) {
        return new AccountRow(
                terms.get(
                        "change.name",
                        "number",
                        Integer.toString(change.change().number()),
                        "title",
                        change.change().title()),
                change.change().decision().map(Decision::on).map(terms::day).orElse(""),
                change.agreed().total());
    }

    private static AccountRow received(PaperWords terms, Received received) {
        return new AccountRow(received.how(), terms.day(received.on()), received.amount());
    }
}
