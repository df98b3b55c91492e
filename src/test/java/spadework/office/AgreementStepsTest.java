// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.finding.Finding;
import spadework.money.Dollars;
import spadework.office.Outcome.Faulty;
import spadework.office.Outcome.Issued;
import spadework.office.Outcome.Refused;
import spadework.office.Outcome.Standing;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Closing;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.Issuing;
import spadework.office.records.JobRecords;
import spadework.office.reply.TemplateFolder;
import spadework.press.PageText;
import spadework.register.Entry;
import spadework.register.Register;
import spadework.warranty.CoveredPart;
import spadework.warranty.Warranty;

/**
 * From the issued proposal to the warranty: what each step writes, what it refuses, and what stays as it was signed.
 */
class AgreementStepsTest {
    private static final LocalDate CLOSED = LocalDate.of(2026, 10, 1);

    @TempDir
    private Path root;

    private SampleJobFolder site;
    private final Office office = Office.with(TemplateFolder.NONE);

    @BeforeEach
    void layOut() {
        site = SampleJobFolder.in(root);
    }

    private Outcome issue() throws IOException {
        return new Issuing(office, SampleJobFolder.TODAY).issue(site.folder());
    }

    private Outcome accept(String... taken) throws IOException {
        return new Accepting(office, SampleJobFolder.TODAY)
                .accept(site.folder(), List.of(taken), SampleJobFolder.yes());
    }

    private Outcome decide(int number, boolean accepted) throws IOException {
        return new Deciding(office, SampleJobFolder.TODAY)
                .decide(site.folder(), number, accepted, SampleJobFolder.on("2026-09-13"));
    }

    private Outcome close(Optional<String> waived) throws IOException {
        return new Closing(office, SampleJobFolder.TODAY)
                .close(site.folder(), new Closing.Asked(CLOSED, Optional.empty(), waived));
    }

    private Bid bid() {
        return (Bid) Office.with(TemplateFolder.NONE).bid(site.folder());
    }

    private Dollars total() {
        return bid().dossier().contract().total();
    }

    private List<String> findings() {
        return bid().findings().stream().map(Finding::id).toList();
    }

    @Test
    void proposalIsIssuedAgainOnlyWhenSomethingChanged() throws IOException {
        assertThat(((Issued) issue()).number()).isEqualTo("2026-014-P1");
        assertThat(issue()).isEqualTo(new Standing("2026-014-P1"));
        site.edit(job -> ((ObjectNode) job.get("walls").get(0)).put("length", "41 ft"));
        assertThat(((Issued) issue()).number()).isEqualTo("2026-014-P2");
        site.edit(job -> job.putArray("notes").add("Only for us"));
        assertThat(issue()).as("a note for the contractor changes no proposal").isEqualTo(new Standing("2026-014-P2"));
        site.editCompany(company -> ((ObjectNode) company.get("priceRules")).put("profit", "13%"));
        assertThat(((Issued) issue()).number()).isEqualTo("2026-014-P3");
    }

    @Test
    void onlyWhatWasIssuedCanBeAccepted() throws IOException {
        assertThat(((Refused) accept()).reasons()).anyMatch(reason -> reason.startsWith("No proposal was issued"));
        issue();
        site.edit(job -> ((ObjectNode) job.get("walls").get(0)).put("length", "41 ft"));
        Map<String, String> before = site.contents();
        assertThat(((Refused) accept()).reasons())
                .anyMatch(
                        reason -> reason.contains("changed since 2026-014-P1: walls/0/length: \"42 ft\" → \"41 ft\""));
        assertThat(site.contents()).as("nothing is written").isEqualTo(before);
    }

    @Test
    void acceptanceAfterThePriceHeldIsRefused() throws IOException {
        site.edit(job -> ((ObjectNode) job.get("schedule"))
                .put("earliestStart", "2026-09-21")
                .put("latestFinish", "2026-10-09"));
        issue();
        Outcome late = new Accepting(office, SampleJobFolder.TODAY)
                .accept(site.folder(), List.of(), SampleJobFolder.on("2026-09-10"));
        assertThat(((Refused) late).reasons()).anyMatch(reason -> reason.contains("held until 2026-09-09"));
        assertThat(new Accepting(office, SampleJobFolder.TODAY)
                        .accept(site.folder(), List.of(), SampleJobFolder.on("2026-09-09")))
                .isInstanceOf(Issued.class);
    }

    @Test
    void optionThatIsNotThereIsNamed() throws IOException {
        issue();
        assertThat(((Refused) accept("OP9")).reasons()).containsExactly("There is no option OP9; there is OP1, OP2.");
    }

    @Test
    void acceptanceWritesOnlyItselfIntoTheJob() throws IOException {
        issue();
        ObjectNode before = (ObjectNode) site.json();
        accept("OP1");
        ObjectNode after = (ObjectNode) site.json();
        assertThat(after.path("accepted").path("options"))
                .extracting(option -> option.asText())
                .containsExactly("OP1");
        assertThat(after.path("accepted").path("declined"))
                .extracting(option -> option.asText())
                .containsExactly("OP2");
        assertThat(after.at("/signing/on").asText())
                .as("one day on every paper")
                .isEqualTo("2026-08-20");
        ((ObjectNode) after.get("signing")).remove("on");
        assertThat(after.without("accepted").toString()).isEqualTo(before.toString());
    }

    @Test
    void signedPriceStandsWhenTheBookMoves() throws IOException {
        issue();
        accept("OP1");
        Dollars signed = total();
        site.editCompany(company -> ((ObjectNode) company.get("priceRules")).put("profit", "30%"));
        assertThat(total()).isEqualTo(signed);
        site.editCompany(company -> company.remove("machines"));
        assertThat(total()).as("not even a broken company file moves it").isEqualTo(signed);
    }

    @Test
    void whatWasSignedMovesOnlyByChangeOrder() throws IOException {
        issue();
        accept("OP1");
        Dollars signed = total();
        site.edit(job -> ((ObjectNode) job.get("walls").get(0)).put("length", "12 ft"));
        assertThat(total()).isEqualTo(signed);
        assertThat(findings()).contains("job-moved");
        assertThat(bid().openStops()).isNotEmpty();
    }

    @Test
    void locateTicketAndNotesMayFollowTheContract() throws IOException {
        issue();
        accept();
        site.edit(job -> {
            ((ObjectNode) job.get("site")).put("locateTicket", "DEMO-NEW");
            job.putArray("notes").add("Gate code 4711");
        });
        assertThat(findings()).doesNotContain("job-moved");
    }

    @Test
    void acceptanceTakenOutOfTheJobIsASignThatSomethingIsWrong() throws IOException {
        issue();
        accept();
        site.edit(job -> job.remove("accepted"));
        assertThat(findings()).contains("acceptance-moved");
        accept();
        assertThat(findings()).doesNotContain("acceptance-moved");
    }

    /** The contract names the scope of work as a part of itself: what was signed lies beside it, and is sealed. */
    @Test
    void scopeOfWorkThatTheContractNamesIsKeptBesideIt() throws IOException {
        issue();
        accept();
        Path papers = site.folder().resolve("for-the-homeowner");
        Path scope = papers.resolve("2026-014-A1-scope-of-work.pdf");
        String contract = PageText.all(Files.readAllBytes(papers.resolve("2026-014-A1-contract.pdf")));
        assertThat(contract).contains("Scope of work of August 10, 2026 for job 2026-014");
        String mark = contract.replaceFirst("(?s).*?(record code [0-9a-f-]+).*", "$1");
        assertThat(PageText.all(Files.readAllBytes(scope))).contains("Job 2026-014", "August 10, 2026", mark);
        Register register = Register.of(site.folder());
        assertThat(register.check().faults()).isEmpty();
        Files.writeString(scope, "another scope");
        assertThat(register.check().faults()).hasSize(1);
    }

    @Test
    void contractWithoutItsSourceIsAStop() throws IOException {
        issue();
        accept();
        Files.delete(site.folder().resolve("kept/2026-014-A1-source.zip"));
        assertThat(findings()).contains("contract-source-missing");
        Bid edited = (Bid) Office.with(TemplateFolder.NONE).bid(Files.readString(site.file()), site.file());
        assertThat(edited.findings())
                .as("the window is told as the command line is")
                .extracting(Finding::id)
                .contains("contract-source-missing");
    }

    @Test
    void acceptedChangeMovesTheTotalAndADeclinedOneNever() throws IOException {
        issue();
        accept();
        Dollars signed = total();
        site.addChange(1);
        site.addChange(2);
        assertThat(total()).as("pending").isEqualTo(signed);
        assertThat(decide(2, false)).isInstanceOf(Issued.class);
        assertThat(total()).as("declined").isEqualTo(signed);
        assertThat(decide(1, true)).isInstanceOf(Issued.class);
        Dollars price = bid().dossier().contract().changes().get(0).agreed().total();
        assertThat(total()).isEqualTo(signed.plus(price));
        assertThat(((Standing) decide(1, true)).number()).isEqualTo("2026-014-C1");
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    @Test
    void changeOrderNeedsAContractFirst() throws IOException {
        site.addChange(1);
        assertThat(decide(1, true)).isInstanceOf(Faulty.class);
    }

    @Test
    void jobIsClosedFromWhatWasBuiltAndPaid() throws IOException {
        issue();
        accept();
        site.addChange(1);
        decide(1, true);
        assertThat(((Refused) close(Optional.empty())).reasons())
                .anyMatch(reason -> reason.startsWith("close-not-recorded"));
        site.finish(List.of("A", "B", "W1"), "$1.00");
        assertThat(((Refused) close(Optional.empty())).reasons()).allMatch(reason -> reason.startsWith("close-unpaid"));
        site.finish(List.of("A", "B", "W1"), total().text());
        assertThat(((Issued) close(Optional.empty())).number()).isEqualTo("2026-014-W1");
        assertThat(site.json().at("/closed/certificate").asText()).isEqualTo("2026-014-W1");
        assertThat(close(Optional.empty())).isEqualTo(new Standing("2026-014-W1"));
        Entry entry = new JobRecords(site.folder(), Register.of(site.folder()).entries())
                .certificate()
                .orElseThrow();
        Warranty warranty = entry.warranty().orElseThrow();
        assertThat(warranty.coverage().walls()).extracting(wall -> wall.label()).containsExactly("A", "B", "W1");
        assertThat(warranty.coverage().parts())
                .extracting(CoveredPart::firstDay)
                .containsOnly(LocalDate.of(2026, 9, 25));
        assertThat(warranty.lastDay()).isEqualTo(LocalDate.of(2036, 9, 24));
    }

    /** The register has the step, the job file does not: the program died between the two. */
    @Test
    void stepThatTheProgramDidNotLiveToWriteIsWrittenByRunningItAgain() throws IOException {
        issue();
        String before = Files.readString(site.file());
        accept("OP1");
        String accepted = Files.readString(site.file());
        Files.writeString(site.file(), before);
        assertThat(((Refused) accept("OP2")).reasons())
                .as("what was signed counts")
                .anyMatch(reason -> reason.contains("the options taken is \"OP1\" there, and \"OP2\" was asked for"));
        assertThat(((Issued) accept("OP1")).number()).isEqualTo("2026-014-A1");
        assertThat(site.json()).isEqualTo(SampleJobFolder.json(accepted));

        site.finish(List.of("A", "B", "C"), total().text());
        String open = Files.readString(site.file());
        close(Optional.empty());
        Files.writeString(site.file(), open);
        assertThat(((Issued) close(Optional.empty())).number()).isEqualTo("2026-014-W1");
        assertThat(site.json().at("/closed/certificate").asText()).isEqualTo("2026-014-W1");
        assertThat(Register.of(site.folder()).check().faults()).isEmpty();
    }

    @Test
    void signedProposalIsHandedOutAsItWasIssued() throws IOException {
        issue();
        accept("OP1");
        byte[] issued = Files.readAllBytes(site.folder().resolve("for-the-homeowner/2026-014-P1-proposal.pdf"));
        site.editCompany(company -> company.put("phone", "(614) 555-0199"));
        office.documents(site.folder(), root.resolve("out"), EnumSet.of(PaperKind.PROPOSAL));
        assertThat(Files.readAllBytes(root.resolve("out/2026-014/for-the-homeowner/proposal.pdf")))
                .isEqualTo(issued);
    }
}
