// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.finding.Finding;
import spadework.money.Dollars;

/** What may be billed and taken, on both sides of each line. */
class BillingChecksTest {
    private static final LocalDate SIGNED = Accounts.SIGNED;

    private final Ledger ledger = Accounts.unbilled(Accounts.contract(
            List.of(Dollars.of("1000.00"), Dollars.of("3000.00"), Dollars.of("6000.00")),
            List.of(Dollars.of("500.00"))));

    private static List<String> ids(List<Finding> found) {
        return found.stream().map(Finding::id).toList();
    }

    private List<String> bill(BillItem item, LocalDate on) {
        return ids(BillingChecks.bill(ledger, item, on, SIGNED));
    }

    @Test
    void firstPaymentIsBilledFromTheDayOfTheContract() {
        assertThat(bill(BillItem.payment(1), SIGNED)).isEmpty();
        assertThat(bill(BillItem.payment(1), SIGNED.minusDays(1))).containsExactly("bill-before-contract");
    }

    @Test
    void paymentsAreBilledInTheirOrder() {
        assertThat(bill(BillItem.payment(2), SIGNED)).containsExactly("bill-out-of-order");
        Ledger after = Accounts.billed(ledger, BillItem.payment(1), SIGNED);
        assertThat(BillingChecks.bill(after, BillItem.payment(2), SIGNED, SIGNED))
                .isEmpty();
    }

    @Test
    void nothingIsBilledTwice() {
        Ledger after =
                Accounts.billed(Accounts.billed(ledger, BillItem.payment(1), SIGNED), BillItem.change(1), SIGNED);
        assertThat(ids(BillingChecks.bill(after, BillItem.payment(1), SIGNED, SIGNED)))
                .containsExactly("bill-payment-twice");
        assertThat(ids(BillingChecks.bill(after, BillItem.change(1), SIGNED, SIGNED)))
                .containsExactly("bill-change-twice");
    }

    @Test
    void onlyWhatTheContractHasIsBilled() {
        assertThat(bill(BillItem.payment(4), SIGNED)).containsExactly("bill-no-such-payment");
        assertThat(bill(BillItem.payment(0), SIGNED)).containsExactly("bill-no-such-payment");
        assertThat(bill(BillItem.change(2), SIGNED)).containsExactly("bill-no-such-change");
        assertThat(bill(BillItem.change(1), SIGNED)).isEmpty();
    }

    @Test
    void noBillIsDatedBeforeTheOneBefore() {
        Ledger after = Accounts.billed(ledger, BillItem.payment(1), SIGNED.plusDays(3));
        assertThat(ids(BillingChecks.bill(after, BillItem.payment(2), SIGNED.plusDays(2), SIGNED)))
                .containsExactly("bill-before-last");
        assertThat(BillingChecks.bill(after, BillItem.payment(2), SIGNED.plusDays(3), SIGNED))
                .isEmpty();
    }

    @Test
    void moneyIsTakenUpToWhatIsBilled() {
        Ledger after = Accounts.billed(ledger, BillItem.payment(1), SIGNED);
        assertThat(BillingChecks.receipt(after, Dollars.of("1000.00"), SIGNED, SIGNED))
                .isEmpty();
        assertThat(ids(BillingChecks.receipt(after, Dollars.of("1000.01"), SIGNED, SIGNED)))
                .containsExactly("receipt-over-billed");
        assertThat(BillingChecks.receipt(after, Dollars.of("0.01"), SIGNED, SIGNED))
                .isEmpty();
        assertThat(ids(BillingChecks.receipt(after, Dollars.ZERO, SIGNED, SIGNED)))
                .containsExactly("receipt-not-money");
        assertThat(ids(BillingChecks.receipt(after, Dollars.of("5.00"), SIGNED.minusDays(1), SIGNED)))
                .containsExactly("bill-before-contract");
    }

    @Test
    void lastPaymentBringsTheChangesThatWereNotBilled() {
        Ledger both =
                Accounts.billed(Accounts.billed(ledger, BillItem.payment(1), SIGNED), BillItem.payment(2), SIGNED);
        assertThat(both.lines(BillItem.payment(3)))
                .containsExactly(
                        new BillLine(BillItem.payment(3), Dollars.of("6000.00")),
                        new BillLine(BillItem.change(1), Dollars.of("500.00")));
        Ledger changed = Accounts.billed(both, BillItem.change(1), SIGNED);
        assertThat(changed.lines(BillItem.payment(3)))
                .containsExactly(new BillLine(BillItem.payment(3), Dollars.of("6000.00")));
    }
}
