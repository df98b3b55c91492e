// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.money.Dollars;

/** What keeps a bill or a receipt from being written. */
public final class BillingChecks {
    private static final String CONTRACT = "the contract, its payments and its changes";

    private final Ledger ledger;
    private final List<Finding> found = new ArrayList<>();

    private BillingChecks(Ledger ledger) {
        this.ledger = ledger;
    }

    /**
     * Looks at a bill before it is written.
     *
     * @param item what it is for
     * @param on the day on which that was done
     * @param signed the day of the contract
     */
    public static List<Finding> bill(Ledger ledger, BillItem item, LocalDate on, LocalDate signed) {
        BillingChecks checks = new BillingChecks(ledger);
        if (checks.exists(item)) {
            checks.once(item);
            checks.order(item);
        }
        checks.notBefore(on, signed, "bill-before-contract");
        checks.notBefore(on, checks.lastBill().orElse(on), "bill-before-last");
        return List.copyOf(checks.found);
    }

    /**
     * Looks at money that came in before it is receipted: it is above zero, and no more than what is billed and open.
     *
     * @param on the day on which it came
     * @param signed the day of the contract
     */
    public static List<Finding> receipt(Ledger ledger, Dollars amount, LocalDate on, LocalDate signed) {
        BillingChecks checks = new BillingChecks(ledger);
        if (amount.isZero() || amount.isNegative()) {
            checks.found("receipt-not-money", "", Map.of("amount", amount.text()));
        } else if (ledger.open().isLessThan(amount)) {
            checks.found(
                    "receipt-over-billed",
                    "",
                    Map.of("amount", amount.text(), "open", ledger.open().text()));
        }
        checks.notBefore(on, signed, "bill-before-contract");
        return List.copyOf(checks.found);
    }

    private boolean exists(BillItem item) {
        if (item.isPayment()) {
            boolean known = item.number() >= 1 && item.number() <= ledger.lastPayment();
            if (!known) {
                found("bill-no-such-payment", name(item), Map.of("last", Integer.toString(ledger.lastPayment())));
            }
            return known;
        }
        boolean accepted = ledger.contract().accepted().stream()
                .anyMatch(change -> change.change().number() == item.number());
        if (!accepted) {
            found("bill-no-such-change", name(item), Map.of());
        }
        return accepted;
    }

    private void once(BillItem item) {
        ledger.invoices().stream()
                .filter(invoice -> invoice.isFor(item))
                .findFirst()
                .ifPresent(invoice -> found(
                        item.isPayment() ? "bill-payment-twice" : "bill-change-twice",
                        name(item),
                        Map.of("number", invoice.number(), "on", invoice.on().toString())));
    }

    /** Payments are billed in the order of the contract. */
    private void order(BillItem item) {
        if (item.isPayment()) {
            IntStream.range(1, item.number())
                    .filter(earlier -> !ledger.isBilled(BillItem.payment(earlier)))
                    .findFirst()
                    .ifPresent(earlier ->
                            found("bill-out-of-order", name(item), Map.of("earlier", Integer.toString(earlier))));
        }
    }

    private Optional<LocalDate> lastBill() {
        return ledger.invoices().stream().map(Invoice::on).max(LocalDate::compareTo);
    }

    private void notBefore(LocalDate on, LocalDate first, String id) {
        if (on.isBefore(first)) {
            found(id, "", Map.of("on", on.toString(), "first", first.toString()));
        }
    }

    private static String name(BillItem item) {
        return Integer.toString(item.number());
    }

    private void found(String id, String about, Map<String, String> values) {
        found.add(new Finding(id, Severity.MUST, about, new TreeMap<>(values), CONTRACT));
    }
}
