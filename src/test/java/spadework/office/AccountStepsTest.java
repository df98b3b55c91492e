// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.billing.BillItem;
import spadework.finding.Finding;
import spadework.money.Dollars;
import spadework.office.Outcome.Issued;
import spadework.office.Outcome.Printed;
import spadework.office.Outcome.Refused;
import spadework.office.Outcome.Standing;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Canceling;
import spadework.office.agreement.Closing;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.Issuing;
import spadework.office.billing.Invoicing;
import spadework.office.billing.Receiving;
import spadework.office.billing.Releasing;
import spadework.office.billing.Statements;
import spadework.office.reply.TemplateFolder;
import spadework.register.Register;

/** Getting paid: what each step writes and what it refuses. */
class AccountStepsTest {
    private static final LocalDate SIGNED = SampleJobFolder.SIGNED;

    @TempDir
    private Path root;

    private SampleJobFolder site;
    private final Office office = Office.with(TemplateFolder.NONE);

    @BeforeEach
    void layOut() {
        site = SampleJobFolder.in(root);
    }

    private void sign() throws IOException {
        assertThat(new Issuing(office, SampleJobFolder.TODAY).issue(site.folder()))
                .isInstanceOf(Issued.class);
        assertThat(new Accepting(office, SampleJobFolder.TODAY).accept(site.folder(), List.of(), SampleJobFolder.yes()))
                .isInstanceOf(Issued.class);
    }

    private Outcome bill(BillItem item, LocalDate on) throws IOException {
        return new Invoicing(office, SampleJobFolder.TODAY).invoice(site.folder(), item, on);
    }

    private Outcome pay(String amount, LocalDate on, String how) throws IOException {
        return new Receiving(office, SampleJobFolder.TODAY).receive(site.folder(), Dollars.of(amount), on, how);
    }

    private Outcome release(String invoice, LocalDate on) throws IOException {
        return release(invoice, true, on);
    }

    private Outcome release(String invoice, boolean cleared, LocalDate on) throws IOException {
        return new Releasing(office, SampleJobFolder.TODAY).release(site.folder(), invoice, cleared, on);
    }

    private String due(int payment) {
        return ((Bid) office.bid(site.folder()))
                .dossier()
                .contract()
                .payments()
                .get(payment - 1)
                .amount()
                .plain();
    }

    private static void refused(Outcome outcome, String... words) {
        assertThat(outcome).isInstanceOf(Refused.class);
        assertThat(String.join("\n", ((Refused) outcome).reasons())).contains(words);
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
        }
    }

    private String paper(Outcome outcome) throws IOException {
        List<Path> files = outcome instanceof Printed printed ? printed.files() : ((Issued) outcome).files();
        return text(files.stream()
                .filter(file -> file.toString().endsWith(".pdf"))
                .findFirst()
                .orElseThrow());
    }

    @Test
    void nothingIsBilledBeforeTheContractIsSigned() throws IOException {
        refused(bill(BillItem.payment(1), SIGNED), "No contract is signed");
        assertThat(Register.isIn(site.folder())).isFalse();
    }

    @Test
    void depositIsBilledPaidAndReceipted() throws IOException {
        sign();
        String deposit = due(1);
        assertThat(paper(bill(BillItem.payment(1), SIGNED)))
                .contains(
                        "Invoice 2026-014-I1",
                        "Payment 1 of",
                        Dollars.of(deposit).text());
        assertThat(paper(pay(deposit, SIGNED, "check 12")))
                .contains("Receipt 2026-014-R1", "Check 12", "Billed and not yet paid $0.00");
        JsonNode row = site.json().at("/received/0");
        assertThat(row.get("amount").asText()).isEqualTo(Dollars.of(deposit).text());
        assertThat(row.get("how").asText()).isEqualTo("check 12");
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    @Test
    void sameStepAgainStandsAndAnotherIsRefused() throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        assertThat(bill(BillItem.payment(1), SIGNED)).isEqualTo(new Standing("2026-014-I1"));
        refused(bill(BillItem.payment(1), SIGNED.plusDays(1)), "was billed on 2026-08-20 as 2026-014-I1");
        pay("100.00", SIGNED, "check 12");
        assertThat(pay("100.00", SIGNED, "check 12")).isEqualTo(new Standing("2026-014-R1"));
        assertThat(site.json().get("received")).hasSize(1);
        refused(pay(due(1), SIGNED, "check 13"), "receipt-over-billed");
    }

    /** The program died between register and job file: asked again, the row is written once. */
    @Test
    void interruptedReceiptIsFinished() throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        pay("100.00", SIGNED, "check 12");
        site.edit(job -> job.remove("received"));
        refused(bill(BillItem.payment(2), SIGNED), "receipt-not-in-job", "$100.00");
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    @Test
    void changedReceiptInTheJobFileIsAStop() throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        pay("100.00", SIGNED, "check 12");
        site.edit(job ->
                ((com.fasterxml.jackson.databind.node.ObjectNode) job.at("/received/0")).put("amount", "$900.00"));
        refused(pay("50.00", SIGNED, "check 13"), "receipt-not-in-job");
    }

    /** The refund and the final account rest on what came in: nobody bends it, and nobody answers for that. */
    @Test
    void changedReceiptStopsPapersCloseAndCancellation() throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        pay("100.00", SIGNED, "check 12");
        site.edit(job -> {
            ((com.fasterxml.jackson.databind.node.ObjectNode) job.at("/received/0")).put("amount", "$9.00");
            job.set("acceptedStops", SampleJobFolder.json("""
                    [{"finding": "receipt-not-in-job", "about": "2026-014-R1", "by": "Odo", "on": "2026-08-21",
                      "why": "we agreed"}]
                    """));
        });
        Bid bid = (Bid) office.readAndBid(site.folder());
        assertThat(bid.openStops()).extracting(Finding::id).containsExactly("receipt-not-in-job");
        refused(cancel(), "receipt-not-in-job");
        refused(
                new Closing(office, SampleJobFolder.TODAY)
                        .close(
                                site.folder(),
                                new Closing.Asked(SIGNED.plusDays(30), Optional.empty(), Optional.of("paid in kind"))),
                "receipt-not-in-job");
    }

    private Outcome cancel() throws IOException {
        return new Canceling(office, SampleJobFolder.TODAY)
                .cancel(
                        site.folder(),
                        new Canceling.NoticeInput(
                                List.of("Ida Wrenfield"),
                                Optional.empty(),
                                SIGNED.plusDays(1),
                                Optional.empty(),
                                Optional.empty()));
    }

    @Test
    void daysThatCannotBeAreRefused() throws IOException {
        sign();
        refused(bill(BillItem.payment(1), SampleJobFolder.TODAY.plusDays(1)), "It cannot have been done on");
        refused(bill(BillItem.payment(1), SIGNED.minusDays(1)), "bill-before-contract");
    }

    @Test
    void canceledContractTakesNoMoney() throws IOException {
        sign();
        cancel();
        refused(bill(BillItem.payment(1), SIGNED.plusDays(2)), "The contract was canceled");
    }

    @Test
    void changeOrderIsBilledByItselfOrWithTheLastPayment() throws IOException {
        sign();
        site.addChange(1);
        new Deciding(office, SampleJobFolder.TODAY).decide(site.folder(), 1, true, SampleJobFolder.on("2026-09-13"));
        bill(BillItem.payment(1), SIGNED);
        assertThat(paper(bill(BillItem.change(1), LocalDate.of(2026, 9, 20))))
                .contains("Change order 1. One more wall");
        refused(bill(BillItem.change(2), LocalDate.of(2026, 9, 20)), "no accepted change order 2");
    }

    @Test
    void statementTellsBillsAndPaymentsOfItsDay(@TempDir Path out) throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        pay(due(1), SIGNED.plusDays(2), "check 12");
        Statements statements = new Statements(office, SampleJobFolder.TODAY);
        assertThat(paper(statements.statement(site.folder(), SIGNED.plusDays(1), out)))
                .contains("Your account on August 21, 2026", "2026-014-I1")
                .doesNotContain("2026-014-R1");
        assertThat(paper(statements.statement(site.folder(), SIGNED.plusDays(2), out)))
                .contains("2026-014-R1");
    }

    @Test
    void lateNoticeIsWrittenFromTheDayAfter() throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        Statements statements = new Statements(office, SampleJobFolder.TODAY);
        refused(statements.lateNotice(site.folder(), SIGNED), "nothing-late");
        assertThat(paper(statements.lateNotice(site.folder(), SIGNED.plusDays(1))))
                .contains("A payment is late", Dollars.of(due(1)).text(), "charges no interest");
        pay(due(1), SIGNED.plusDays(2), "check 12");
        refused(statements.lateNotice(site.folder(), SIGNED.plusDays(3)), "nothing-late");
    }

    @Test
    void releaseFollowsTheAccount() throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        assertThat(paper(release("I1", SIGNED))).contains("When we have received", "takes effect when the amount");
        pay(due(1), SIGNED, "check 12");
        assertThat(paper(release("2026-014-I1", SIGNED)))
                .contains("We have received", "our own plain release")
                .doesNotContain("takes effect");
        assertThat(release("I1", SIGNED)).isInstanceOf(Standing.class);
        refused(release("I1", SIGNED.plusDays(1)), "release-twice");
        refused(release("I9", SIGNED), "There is no invoice I9");
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    /** Given too early, an unconditional release stands though the check comes back. */
    @Test
    void releaseWaitsForACheckUntilTheBankHasPaidIt() throws IOException {
        sign();
        bill(BillItem.payment(1), SIGNED);
        pay(due(1), SIGNED, "check 12");
        assertThat(paper(release("I1", false, SIGNED)))
                .contains("When we have received " + Dollars.of(due(1)).text(), "takes effect when the amount");
        assertThat(paper(release("I1", true, SIGNED.plusDays(5))))
                .contains("We have received " + Dollars.of(due(1)).text())
                .doesNotContain("takes effect");
    }

    /** Whoever comes second finds the account as the first left it. */
    @Test
    void eightAtOnceTakeNoMoreThanIsBilled() throws Exception {
        sign();
        bill(BillItem.payment(1), SIGNED);
        String deposit = due(1);
        ExecutorService eight = Executors.newFixedThreadPool(8);
        try {
            List<Callable<Outcome>> steps = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                String how = "check " + i;
                steps.add(() -> pay(deposit, SIGNED, how));
            }
            int issued = 0;
            for (Future<Outcome> step : eight.invokeAll(steps)) {
                try {
                    issued += step.get() instanceof Issued ? 1 : 0;
                } catch (java.util.concurrent.ExecutionException second) {
                    assertThat(second).hasMessageContaining("receipt-over-billed");
                }
            }
            assertThat(issued).isEqualTo(1);
        } finally {
            eight.shutdownNow();
        }
        assertThat(site.json().get("received")).hasSize(1);
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }
}
