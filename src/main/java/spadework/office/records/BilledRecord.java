// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.billing.BillItem;
import spadework.billing.BillLine;
import spadework.billing.Invoice;
import spadework.billing.Ledger;
import spadework.billing.Receipt;
import spadework.contract.Contract;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Received;
import spadework.money.Dollars;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;

/**
 * Bills and receipts as the register has them, and money of which the job file alone knows.
 *
 * @param differences receipts that the job file does not have, or has otherwise
 */
public record BilledRecord(Ledger ledger, List<Finding> differences) {
    /** The fact of a receipt that says how much came. */
    public static final String AMOUNT = "amount";

    /** The fact of a receipt that says by what means it came. */
    public static final String HOW = "how";

    /** The stop of a receipt that the job file does not have, or has otherwise. */
    public static final String NOT_IN_JOB = "receipt-not-in-job";

    private static final String PAYMENT = "payment.";
    private static final String CHANGE = "change.";

    public BilledRecord {
        differences = List.copyOf(differences);
    }

    /**
     * Reads the account of a signed job.
     *
     * @param received what the job file says came in
     */
    public static BilledRecord of(JobRecords records, Contract contract, List<Received> received) {
        List<Receipt> receipts = new ArrayList<>(receipts(records));
        List<Finding> differences = differences(receipts, received);
        List<Received> untold = new ArrayList<>(received);
        receipts.forEach(receipt -> untold.remove(told(receipt)));
        untold.forEach(one -> receipts.add(new Receipt("", one.on(), one.amount(), one.how())));
        return new BilledRecord(new Ledger(contract, invoices(records), receipts), differences);
    }

    /** The receipts that were given, in their order. */
    static List<Receipt> receipts(JobRecords records) {
        return records.all(Event.PAYMENT_RECEIVED).stream()
                .map(BilledRecord::receipt)
                .toList();
    }

    /** A stop for each receipt that is not among what the job file says came in, each payment counted once. */
    static List<Finding> differences(List<Receipt> receipts, List<Received> received) {
        List<Received> untold = new ArrayList<>(received);
        return receipts.stream()
                .filter(receipt -> !untold.remove(told(receipt)))
                .map(BilledRecord::missing)
                .toList();
    }

    private static Received told(Receipt receipt) {
        return new Received(receipt.on(), receipt.amount(), receipt.how());
    }

    /** The bills that were issued, in their order. */
    public static List<Invoice> invoices(JobRecords records) {
        return records.all(Event.INVOICE_ISSUED).stream()
                .map(BilledRecord::invoice)
                .toList();
    }

    /** The lines of a bill as the register keeps them. */
    public static Map<String, String> facts(List<BillLine> lines) {
        Map<String, String> facts = new LinkedHashMap<>();
        lines.forEach(line -> facts.put(
                (line.item().isPayment() ? PAYMENT : CHANGE) + line.item().number(),
                line.amount().plain()));
        return facts;
    }

    private static Invoice invoice(Entry entry) {
        List<BillLine> lines = new ArrayList<>();
        entry.facts()
                .forEach((name, amount) ->
                        item(name).ifPresent(item -> lines.add(new BillLine(item, Dollars.of(amount)))));
        return new Invoice(number(entry), entry.on(), lines);
    }

    private static Optional<BillItem> item(String fact) {
        if (fact.startsWith(PAYMENT)) {
            return Optional.of(BillItem.payment(Integer.parseInt(fact.substring(PAYMENT.length()))));
        }
        return fact.startsWith(CHANGE)
                ? Optional.of(BillItem.change(Integer.parseInt(fact.substring(CHANGE.length()))))
                : Optional.empty();
    }

    private static Receipt receipt(Entry entry) {
        return new Receipt(
                number(entry),
                entry.on(),
                entry.fact(AMOUNT).map(Dollars::of).orElse(Dollars.ZERO),
                entry.fact(HOW).orElse(""));
    }

    private static String number(Entry entry) {
        return entry.number().map(DocumentNumber::text).orElse("");
    }

    private static Finding missing(Receipt receipt) {
        return new Finding(
                NOT_IN_JOB,
                Severity.STOP,
                receipt.number(),
                Map.of(
                        "amount", receipt.amount().text(),
                        "on", receipt.on().toString(),
                        "how", receipt.how()),
                "the register of the job");
    }
}
