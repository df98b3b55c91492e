// SPDX-License-Identifier: Apache-2.0
package spadework.billing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.money.Dollars;

/**
 * The account of a signed contract between its parties. Money is taken only against a bill, and when everything is
 * billed, invoiced and agreed are equal to the cent. Received is more than invoiced only where a change that takes away
 * was billed after the money had come in.
 *
 * @param contract with every accepted change, at its sealed prices
 * @param invoices in the order in which they were issued
 * @param receipts in the order in which money came in
 */
public record Ledger(Contract contract, List<Invoice> invoices, List<Receipt> receipts) {

    public Ledger {
        invoices = List.copyOf(invoices);
        receipts = List.copyOf(receipts);
    }

    /** Contract and accepted changes. */
    public Dollars agreed() {
        return contract.total();
    }

    /** What was billed so far. */
    public Dollars invoiced() {
        return Dollars.total(invoices.stream().map(Invoice::amount).toList());
    }

    /** What came in so far. */
    public Dollars received() {
        return Dollars.total(receipts.stream().map(Receipt::amount).toList());
    }

    /** What came in so far in other ways than by check. */
    public Dollars receivedWithoutChecks() {
        return Dollars.total(receipts.stream()
                .filter(receipt -> !receipt.isCheck())
                .map(Receipt::amount)
                .toList());
    }

    /** What is billed and not paid. */
    public Dollars open() {
        return invoiced().minus(received());
    }

    /** What is agreed and not billed yet; below zero while a change that takes away is not billed. */
    public Dollars unbilled() {
        return agreed().minus(invoiced());
    }

    public boolean isBilled(BillItem item) {
        return invoices.stream().anyMatch(invoice -> invoice.isFor(item));
    }

    /** Whether nothing is left to bill: payments and accepted changes alike. */
    public boolean isWhollyBilled() {
        return items().allMatch(this::isBilled);
    }

    /** The payment of the contract that comes last, which takes up the changes not billed before. */
    public int lastPayment() {
        return contract.payments().size();
    }

    /** What a bill for an item asks for: the last payment brings the changes with it that were not billed by then. */
    public List<BillLine> lines(BillItem item) {
        List<BillLine> lines = new ArrayList<>();
        lines.add(line(item));
        if (item.equals(BillItem.payment(lastPayment()))) {
            changes().filter(change -> !isBilled(change)).map(this::line).forEach(lines::add);
        }
        return lines;
    }

    /** What was billed and is not covered, oldest first: money and credits cover the oldest bill first. */
    public List<OpenInvoice> openInvoices() {
        List<OpenInvoice> open = new ArrayList<>();
        Dollars left = received();
        for (Invoice credit : invoices.stream().filter(Invoice::isCredit).toList()) {
            left = left.minus(credit.amount());
        }
        for (Invoice invoice : invoices.stream().filter(one -> !one.isCredit()).toList()) {
            Dollars covered = left.isLessThan(invoice.amount()) ? left : invoice.amount();
            left = left.minus(covered);
            Dollars rest = invoice.amount().minus(covered);
            if (!rest.isZero()) {
                open.add(new OpenInvoice(invoice, rest));
            }
        }
        return open;
    }

    /**
     * The bills that a receipt's money goes to, oldest first: what was open before it, less what is open after it.
     *
     * @param receipt one of this account
     */
    public List<CoveredInvoice> coveredBy(Receipt receipt) {
        int index = receipts.indexOf(receipt);
        List<OpenInvoice> before = new Ledger(contract, invoices, receipts.subList(0, index)).openInvoices();
        List<OpenInvoice> after = new Ledger(contract, invoices, receipts.subList(0, index + 1)).openInvoices();
        List<CoveredInvoice> covered = new ArrayList<>();
        for (OpenInvoice open : before) {
            Dollars rest = after.stream()
                    .filter(left -> left.invoice().equals(open.invoice()))
                    .findFirst()
                    .map(OpenInvoice::rest)
                    .orElse(Dollars.ZERO);
            if (!rest.equals(open.rest())) {
                covered.add(new CoveredInvoice(open.invoice(), open.rest().minus(rest)));
            }
        }
        return covered;
    }

    /**
     * A bill, or a part of one, that money went to.
     *
     * @param amount how much of it
     */
    public record CoveredInvoice(Invoice invoice, Dollars amount) {}

    /**
     * A bill that is not paid in full.
     *
     * @param rest what is still to be paid of it
     */
    public record OpenInvoice(Invoice invoice, Dollars rest) {}

    private Stream<BillItem> items() {
        return Stream.concat(IntStream.rangeClosed(1, lastPayment()).mapToObj(BillItem::payment), changes());
    }

    private Stream<BillItem> changes() {
        return contract.accepted().stream()
                .map(change -> BillItem.change(change.change().number()));
    }

    private BillLine line(BillItem item) {
        Dollars amount = item.isPayment()
                ? contract.payments().get(item.number() - 1).amount()
                : change(item).agreed().total();
        return new BillLine(item, amount);
    }

    private PricedChange change(BillItem item) {
        return contract.accepted().stream()
                .filter(change -> change.change().number() == item.number())
                .findFirst()
                .orElseThrow();
    }
}
