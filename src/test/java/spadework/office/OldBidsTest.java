// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

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
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.LostProposal;
import spadework.office.book.BookService;
import spadework.office.portfolio.Copying;
import spadework.office.portfolio.Copying.Take;
import spadework.office.portfolio.RepriceService;
import spadework.office.records.JobRecords;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.register.Event;
import spadework.register.Register;

/** What is done with bids of before: priced anew, copied, written off. */
class OldBidsTest {
    private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 1);

    @TempDir
    Path root;

    private SampleJobFolder site;

    @BeforeEach
    void layOut() {
        site = SampleJobFolder.in(root);
    }

    private RepriceService.Dates on(LocalDate start) {
        return new RepriceService.Dates(OCTOBER, Optional.of(start), Optional.of(start.plusDays(30)));
    }

    private void dearerStone() throws IOException {
        BookService.at(root.resolve("price-book.json"))
                .change("STONE-MACH", Map.of("material/cost", "$41.50"), LocalDate.of(2026, 9, 1), "September list");
    }

    @Test
    void whatMovedIsToldLineByLineWithItsReasonAndNothingIsWritten() throws IOException {
        String before = Files.readString(site.file());
        String old = ((Bid) Office.with(TemplateFolder.NONE).bid(site.file()))
                .total()
                .text();
        dearerStone();
        Reply answered = new RepriceService().reprice(site.file(), on(OCTOBER), false);
        assertThat(answered.err()).isEmpty();
        assertThat(answered.out().get(0))
                .startsWith("STONE-MACH")
                .contains("material")
                .doesNotContain("quantity");
        assertThat(answered.out().get(1)).contains("2026-09-01 September list; material/cost $31.50 → $41.50");
        String now = ((Bid) Office.with(TemplateFolder.NONE).bid(site.file()))
                .total()
                .text();
        assertThat(answered.out().get(answered.out().size() - 1)).contains(old, now, "+$");
        assertThat(Files.readString(site.file())).isEqualTo(before);
    }

    @Test
    void priceOfAnIssuedProposalIsTheOneThatWasIssued() throws IOException {
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(site.folder());
        String issued = ((Bid) Office.with(TemplateFolder.NONE).bid(site.file()))
                .total()
                .text();
        site.editCompany(company ->
                ((com.fasterxml.jackson.databind.node.ObjectNode) company.get("priceRules")).put("overhead", "25%"));
        Reply answered = new RepriceService().reprice(site.file(), on(OCTOBER), false);
        assertThat(answered.out().get(answered.out().size() - 1)).contains(issued);
        assertThat(answered.out().get(0)).contains("price rules");
    }

    @Test
    void savedBidCarriesItsNewDate() throws IOException {
        dearerStone();
        assertThat(new RepriceService().reprice(site.file(), on(OCTOBER), true).done())
                .isTrue();
        assertThat(site.json().get("issued").asText()).isEqualTo("2026-10-01");
        Reply early = new RepriceService()
                .reprice(
                        site.file(),
                        new RepriceService.Dates(OCTOBER.plusYears(1), Optional.empty(), Optional.empty()),
                        true);
        assertThat(early.done()).isFalse();
        assertThat(early.err().get(0)).contains("--start");
        assertThat(site.json().get("issued").asText()).isEqualTo("2026-10-01");
    }

    @Test
    void signedContractIsNotPricedAnew() throws IOException {
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(site.folder());
        new Accepting(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY)
                .accept(site.folder(), List.of(), SampleJobFolder.yes());
        assertThat(new RepriceService().reprice(site.file(), on(OCTOBER), true).done())
                .isFalse();
        assertThat(LostProposal.lose(site.file(), OCTOBER, "x", SampleJobFolder.TODAY))
                .isInstanceOf(Outcome.Refused.class);
    }

    @Test
    void lostBidIsRegisteredOnceWithItsReasonAndTakenUpByALaterIssue() throws IOException {
        assertThat(LostProposal.lose(site.file(), OCTOBER, "x", SampleJobFolder.TODAY))
                .isInstanceOf(Outcome.Refused.class);
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(site.folder());
        assertThat(LostProposal.lose(site.file(), LocalDate.of(2026, 8, 1), "x", SampleJobFolder.TODAY))
                .isInstanceOf(Outcome.Refused.class);
        assertThat(LostProposal.lose(site.file(), OCTOBER, "took a lower bid", SampleJobFolder.TODAY))
                .isInstanceOf(Outcome.Issued.class);
        assertThat(LostProposal.lose(site.file(), OCTOBER, "took a lower bid", SampleJobFolder.TODAY))
                .isInstanceOf(Outcome.Standing.class);
        assertThat(LostProposal.lose(site.file(), OCTOBER, "again", SampleJobFolder.TODAY))
                .as("another reason")
                .isInstanceOf(Outcome.Refused.class);
        assertThat(Register.of(site.folder()).entries())
                .filteredOn(e -> e.event() == Event.PROPOSAL_DECLINED)
                .hasSize(1)
                .allMatch(e -> e.fact("reason").equals(Optional.of("took a lower bid")));
        assertThat(JobRecords.beside(site.file()).isLost()).isTrue();
        site.edit(job -> job.put("title", "Another title"));
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(site.folder());
        assertThat(JobRecords.beside(site.file()).isLost()).isFalse();
    }

    @Test
    void copyTakesWhatIsNamedAndNothingThatWasLookedAtElsewhere() throws IOException {
        Path copy = root.resolve("new/job.json");
        Reply answered = Copying.copy(
                site.file(), copy, "2026-060", "Juniper Ostrand", OCTOBER, EnumSet.of(Take.WALLS, Take.TERMS));
        assertThat(answered.done()).isTrue();
        String text = Files.readString(copy);
        assertThat(text)
                .contains("Juniper Ostrand", "2026-060", "\"length\": \"42 ft\"", "\"excluded\"")
                .doesNotContain(
                        "Wrenfield",
                        "\"condition\"",
                        "Invert",
                        "observations",
                        "locateTicket",
                        "acceptedStops",
                        "options",
                        "\"items\"",
                        "insideFloor");
        assertThat(answered.out()).anyMatch(line -> line.contains("/walls/0/condition: found no \"condition\""));
        assertThat(Copying.copy(site.file(), copy, "1", "x", OCTOBER, EnumSet.of(Take.ITEMS))
                        .done())
                .isFalse();
        assertThat(Files.readString(copy)).isEqualTo(text);
    }
}
