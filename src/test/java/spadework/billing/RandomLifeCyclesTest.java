// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.contract.Contract;
import spadework.money.Dollars;

/** Random lives of a contract: whatever the order of steps, invoices, receipts and releases agree with its sum. */
class RandomLifeCyclesTest {
    private static final int LIVES = 500;

    private static Stream<Long> seeds() {
        return new SplittableRandom(20261128).longs(LIVES).boxed();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void moneyAgreesAtEveryStep(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        Contract contract =
                Accounts.contract(amounts(dice, 1 + dice.nextInt(6), false), amounts(dice, dice.nextInt(4), true));
        Ledger ledger = Accounts.unbilled(contract);
        LocalDate day = Accounts.SIGNED;
        while (!ledger.isWhollyBilled() || ledger.open().compareTo(Dollars.ZERO) > 0) {
            day = day.plusDays(dice.nextInt(4));
            Ledger before = ledger;
            if (dice.nextBoolean()) {
                BillItem item =
                        dice.nextBoolean() ? BillItem.payment(dice.nextInt(8)) : BillItem.change(dice.nextInt(5));
                boolean lawful =
                        BillingChecks.bill(ledger, item, day, Accounts.SIGNED).isEmpty();
                ledger = lawful ? Accounts.billed(ledger, item, day) : ledger;
            } else {
                Dollars amount = dice.nextBoolean() ? ledger.open() : cents(dice, 2_000_000);
                boolean lawful = BillingChecks.receipt(ledger, amount, day, Accounts.SIGNED)
                        .isEmpty();
                ledger = lawful ? Accounts.paid(ledger, amount, day) : ledger;
            }
            assertThat(ledger.invoiced().plus(ledger.unbilled())).isEqualTo(contract.total());
            assertThat(Dollars.total(ledger.openInvoices().stream()
                            .map(Ledger.OpenInvoice::rest)
                            .toList()))
                    .as("open bills come to what is open")
                    .isEqualTo(ledger.open().isNegative() ? Dollars.ZERO : ledger.open());
            if (ledger.receipts().size() > before.receipts().size()) {
                assertThat(ledger.received()).as("no more is taken than billed").isLessThanOrEqualTo(ledger.invoiced());
            }
        }
        assertThat(ledger.invoiced()).as("billed in all").isEqualTo(contract.total());
        assertThat(ledger.received()).as("paid in all").isGreaterThanOrEqualTo(contract.total());
        if (ledger.open().isZero()) {
            Release last =
                    Release.of(ledger, ledger.invoices().get(ledger.invoices().size() - 1), true);
            assertThat(last.kind().isFinal() && !last.kind().isConditional()).isTrue();
            assertThat(last.amount()).as("released for").isEqualTo(contract.total());
        }
    }

    /** What is released for and what is still to come are together what was billed up to a bill. */
    @ParameterizedTest
    @MethodSource("seeds")
    void releaseRestsOnWhatWasBilled(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        Ledger ledger = Accounts.unbilled(Accounts.contract(amounts(dice, 3, false), List.of()));
        ledger = Accounts.billed(ledger, BillItem.payment(1), Accounts.SIGNED);
        ledger = Accounts.billed(ledger, BillItem.payment(2), Accounts.SIGNED.plusDays(9));
        Dollars first = ledger.invoices().get(0).amount();
        Dollars paid =
                dice.nextBoolean() ? first : Dollars.of(first.amount().divideToIntegralValue(BigDecimal.valueOf(2)));
        ledger = Accounts.paid(ledger, paid, Accounts.SIGNED.plusDays(10));
        Release one = Release.of(ledger, ledger.invoices().get(0), true);
        Release two = Release.of(ledger, ledger.invoices().get(1), true);
        assertThat(one.kind().isConditional()).isEqualTo(paid.isLessThan(first));
        assertThat(one.amount()).isEqualTo(paid.equals(first) ? first : first.minus(paid));
        assertThat(two.kind().words()).isEqualTo("conditional progress");
        assertThat(two.amount().plus(ledger.received())).isEqualTo(ledger.invoiced());
        assertThat(two.through()).isEqualTo(Accounts.SIGNED.plusDays(9));
    }

    /** Whatever came by check is still to come until it has cleared; what came otherwise counts at once. */
    @ParameterizedTest(name = "paid by {0}, cleared {1}: conditional {2}")
    @CsvSource({
        "check 1142, false, true",
        "Cashier's Check, false, true",
        "cheque 7, false, true",
        "check 1142, true, false",
        "bank transfer, false, false",
        "checked cash, false, false"
    })
    void checksCountOnceTheyHaveCleared(String how, boolean cleared, boolean conditional) {
        Ledger billed = Accounts.billed(
                Accounts.unbilled(Accounts.contract(List.of(Dollars.of("100.00"), Dollars.of("50.00")), List.of())),
                BillItem.payment(1),
                Accounts.SIGNED);
        Ledger paid = new Ledger(
                billed.contract(),
                billed.invoices(),
                List.of(new Receipt("R1", Accounts.SIGNED, Dollars.of("100.00"), how)));
        Release release = Release.of(paid, paid.invoices().get(0), cleared);
        assertThat(release.kind().isConditional()).isEqualTo(conditional);
        assertThat(release.amount()).isEqualTo(Dollars.of("100.00"));
    }

    private static List<Dollars> amounts(SplittableRandom dice, int count, boolean signed) {
        List<Dollars> amounts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Dollars amount = cents(dice, 1_500_000);
            amounts.add(signed && dice.nextInt(3) == 0 ? Dollars.ZERO.minus(amount) : amount);
        }
        return amounts;
    }

    private static Dollars cents(SplittableRandom dice, int most) {
        return Dollars.of(BigDecimal.valueOf(1 + dice.nextInt(most), 2));
    }
}
