// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.billing.Invoice;
import spadework.billing.Ledger;
import spadework.billing.Receipt;
import spadework.job.Accepted;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.PaperHeads;

/** Puts a statement of account together. */
public final class StatementPaper {
    private StatementPaper() {}

    /**
     * The account on a day.
     *
     * @param number of the late notice; blank for a statement
     * @param contract number of the contract
     * @param on the day; what came later is not in it
     * @throws java.util.NoSuchElementException if the contract is not signed
     */
    public static AccountStatement of(Dossier dossier, String number, String contract, Ledger ledger, LocalDate on) {
        Ledger then = until(ledger, on);
        return new AccountStatement(
                PaperHeads.of(dossier, on),
                number,
                contract,
                dossier.terms()
                        .day(dossier.job()
                                .agreement()
                                .accepted()
                                .map(Accepted::on)
                                .orElseThrow()),
                rows(dossier, then),
                late(dossier, then, on),
                AccountTotals.of(then),
                dossier.terms().own(dossier.company().letterhead().payTo()));
    }

    /** The account as it stood at the end of a day. */
    private static Ledger until(Ledger ledger, LocalDate on) {
        return new Ledger(
                ledger.contract(),
                ledger.invoices().stream().filter(one -> !one.on().isAfter(on)).toList(),
                ledger.receipts().stream().filter(one -> !one.on().isAfter(on)).toList());
    }

    private static List<StatementRow> rows(Dossier dossier, Ledger ledger) {
        List<Move> moves = Stream.concat(
                        ledger.invoices().stream().map(invoice -> Move.of(dossier.terms(), ledger, invoice)),
                        ledger.receipts().stream().map(Move::of))
                .sorted(Comparator.comparing(Move::on))
                .toList();
        List<StatementRow> rows = new ArrayList<>();
        Dollars open = Dollars.ZERO;
        for (Move move : moves) {
            open = open.plus(move.billed()).minus(move.paid());
            rows.add(new StatementRow(
                    dossier.terms().day(move.on()), move.number(), move.what(), move.billed(), move.paid(), open));
        }
        return rows;
    }

    /** A bill or money that came in; on one day the bill comes first. */
    private record Move(LocalDate on, String number, String what, Dollars billed, Dollars paid) {

        static Move of(PaperWords terms, Ledger ledger, Invoice invoice) {
            String what = BillRows.of(terms, ledger.contract(), invoice).stream()
                    .map(BillRow::what)
                    .collect(Collectors.joining("; "));
            return new Move(invoice.on(), invoice.number(), what, invoice.amount(), Dollars.ZERO);
        }

        static Move of(Receipt receipt) {
            return new Move(receipt.on(), receipt.number(), receipt.how(), Dollars.ZERO, receipt.amount());
        }
    }

    private static List<LateRow> late(Dossier dossier, Ledger ledger, LocalDate on) {
        return ledger.openInvoices().stream()
                .map(open -> new LateRow(
                        open.invoice().number(),
                        dossier.terms().day(open.invoice().on()),
                        ChronoUnit.DAYS.between(open.invoice().on(), on),
                        BillRows.of(dossier.terms(), ledger.contract(), open.invoice()),
                        open.rest()))
                .toList();
    }
}
