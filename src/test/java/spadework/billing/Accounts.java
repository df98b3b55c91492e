// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.contract.Sum;
import spadework.job.Alteration;
import spadework.job.Change;
import spadework.job.ChangeReason;
import spadework.job.ChangeState;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.pricing.Due;
import spadework.pricing.OfferedPrice;

/** Signed contracts for tests, with payments and change orders of any amounts. */
final class Accounts {
    static final LocalDate SIGNED = LocalDate.of(2026, 7, 14);

    private Accounts() {}

    /** A contract with these payments and accepted changes. */
    static Contract contract(List<Dollars> payments, List<Dollars> changes) {
        Dollars price = Dollars.total(payments);
        List<Due> dues = new ArrayList<>();
        for (int i = 0; i < payments.size(); i++) {
            dues.add(new Due("Event " + (i + 1), Percent.of("10"), i == 0, payments.get(i)));
        }
        List<PricedChange> priced = new ArrayList<>();
        Dollars before = price;
        for (int i = 0; i < changes.size(); i++) {
            Sum sum = new Sum(changes.get(i), Dollars.ZERO);
            Dollars after = before.plus(changes.get(i));
            priced.add(new PricedChange(
                    change(i + 1),
                    before,
                    sum,
                    sum,
                    after,
                    List.of(),
                    Dollars.ZERO,
                    sum,
                    List.of(),
                    List.of(),
                    List.of()));
            before = after;
        }
        OfferedPrice offered =
                new OfferedPrice("Book", SIGNED, List.of(), Dollars.ZERO, price, Dollars.ZERO, price, List.of(), dues);
        return new Contract(offered, List.of(), dues, priced);
    }

    private static Change change(int number) {
        return new Change(
                number,
                "Change " + number,
                SIGNED.plusDays(5),
                ChangeReason.values()[0],
                "",
                "",
                List.of(),
                Alteration.NONE,
                List.of(),
                0,
                ChangeState.ACCEPTED,
                Optional.empty());
    }

    static Ledger unbilled(Contract contract) {
        return new Ledger(contract, List.of(), List.of());
    }

    /** The account with one more bill. */
    static Ledger billed(Ledger ledger, BillItem item, LocalDate on) {
        List<Invoice> invoices = new ArrayList<>(ledger.invoices());
        invoices.add(new Invoice("I" + (invoices.size() + 1), on, ledger.lines(item)));
        return new Ledger(ledger.contract(), invoices, ledger.receipts());
    }

    /** The account with more money in it. */
    static Ledger paid(Ledger ledger, Dollars amount, LocalDate on) {
        List<Receipt> receipts = new ArrayList<>(ledger.receipts());
        receipts.add(new Receipt("R" + (receipts.size() + 1), on, amount, "check"));
        return new Ledger(ledger.contract(), ledger.invoices(), receipts);
    }
}
