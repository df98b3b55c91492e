// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.contract.PricedChange;
import spadework.finding.Finding;
import spadework.intake.law.StateRuleBook;
import spadework.law.LegalNotice;
import spadework.law.NoticeCase;
import spadework.office.Bid;
import spadework.paperwork.ContractJobs;
import spadework.press.PageText;
import spadework.press.PrintedType;
import spadework.press.PrintedType.Found;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** The notices that states want: each measured where it stands, once counsel has given its wording. */
class ContractNoticesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"CA", "CT", "FL", "IL", "MA", "MD", "NJ", "NY", "OH", "PA", "TX", "VA", "WA"})
    void withWordingEachNoticeHasItsSizeWeightAndPlace(String state) {
        Path job = ContractJobs.in(folder, state);
        List<LegalNotice> notices = due(state);
        withWording(notices, state);
        byte[] pdf = ContractJobs.pdf(job);
        PrintedType type = PrintedType.of(pdf);
        Found signature = type.find("Buyer: Ida Wrenfield").orElseThrow();

        assertThat(notices).isNotEmpty();
        for (LegalNotice notice : notices) {
            String words = notice.capitals() ? wording(notice).toUpperCase(Locale.ROOT) : wording(notice);
            List<Found> places = type.all(words);
            assertThat(places).as(notice.name()).hasSize(1);
            Found found = places.get(0);
            assertThat(found.least()).as(notice.name()).isGreaterThanOrEqualTo(notice.points() - PrintedType.HAIR);
            assertThat(found.bold() || !notice.bold())
                    .as(notice.name() + " is bold")
                    .isTrue();
            stands(type, notice, found, signature);
        }
        assertThat(ids(job)).doesNotContain("notice-unworded");
        assertThat(PageText.all(pdf)).doesNotContain("Draft", "its wording is to be added");
    }

    private static void stands(PrintedType type, LegalNotice notice, Found found, Found signature) {
        switch (notice.place()) {
            case FIRST_PAGE -> assertThat(found.page()).isEqualTo(1);
            case ABOVE_THE_SIGNATURE -> {
                assertThat(found.page()).as(notice.name()).isEqualTo(signature.page());
                assertThat(found.bottom()).as(notice.name()).isLessThan(signature.top());
            }
            case PAGE_OF_ITS_OWN -> {
                assertThat(found.page()).as("read before anybody signs").isLessThan(signature.page());
                assertThat(type.onPage(found.page()))
                        .as(notice.name())
                        .startsWith(wording(notice).replaceAll("\\s+", ""))
                        .contains("SignatureofIdaWrenfieldDate", "SignatureofTobiasWrenfieldDate")
                        .contains("SignatureforFennimarshWall&DrainLLCDate");
            }
            case BODY -> assertThat(found.page()).as(notice.name()).isLessThanOrEqualTo(signature.page());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"CA", "CT", "FL", "IL", "MA", "MD", "NJ", "NY", "OH", "PA", "TX", "VA", "WA"})
    void withoutWordingTheContractIsADraftAndNothingIsMadeUp(String state) {
        Path job = ContractJobs.in(folder, state);
        String text = PageText.all(ContractJobs.pdf(job));

        assertThat(ids(job)).contains("notice-unworded");
        assertThat(text).contains("Draft, not for signature");
        due(state).stream()
                .filter(notice -> notice.wording().isEmpty())
                .forEach(notice -> assertThat(text)
                        .contains("Place of the notice that " + notice.citation()
                                + " prescribes: its wording is to be added."));
    }

    /** A state that asks for no notice of its own, once counsel has read its rules. */
    @Test
    void whereNothingIsWantingItIsNoDraft() {
        Path job = ContractJobs.in(folder, "NC");
        withWording(List.of(), "NC");

        assertThat(ids(job))
                .doesNotContain("notice-unworded", "rules-from-memory", "license-elsewhere")
                .noneMatch(id -> id.startsWith("content-"));
        assertThat(PageText.all(ContractJobs.pdf(job))).doesNotContain("Draft");
    }

    /** SB 517, Stats. 2025 ch. 585 (secondary source): words on subcontractors stand on change orders too. */
    @ParameterizedTest
    @CsvSource({"CA, subcontractor disclosure", "OH,"})
    void changeOrderRepeatsWhatTheStateWantsOnIt(String state, String repeated) {
        Path job = ContractJobs.in(folder, state, ContractJobs::changed, company -> {});
        withWording(due(state), state);
        Bid bid = ContractJobs.bid(job);

        assertThat(bid.contracted().contract().changes()).hasSize(1);
        for (PricedChange change : bid.contracted().contract().changes()) {
            ChangeOrder order = ChangeOrderPaper.of(bid.proposed(), change);
            assertThat(order.notices())
                    .extracting(NoticeText::key)
                    .containsExactlyElementsOf(
                            Optional.ofNullable(repeated).stream().toList());
            assertThat(order.notices())
                    .extracting(NoticeText::wording)
                    .allMatch(words -> words.startsWith("Test words that stand for the notice called "));
            assertThat(printed(order))
                    .contains(order.notices().stream().map(NoticeText::wording).collect(Collectors.joining()));
        }
    }

    private static String printed(ChangeOrder order) {
        byte[] pdf = new PagePress(Templates.bundled())
                .print(
                        "change-order",
                        Map.of("change", order),
                        new PageInfo("en-US", "Test", LocalDate.of(2026, 7, 8)));
        return PageText.all(pdf).replaceAll("\\s+", " ");
    }

    /** A state without rules, or with rules from memory, never prints clean; the office is told what is missing. */
    @ParameterizedTest
    @CsvSource({"WY, state-unread", "NC, rules-from-memory", "IL, rules-from-memory"})
    void whatNobodyReadPrintsADraftAndTheOfficeIsToldWhatIsMissing(String state, String id) {
        Path job = ContractJobs.in(folder, state);
        String text = PageText.all(ContractJobs.pdf(job));

        assertThat(ids(job)).contains(id);
        assertThat(text).contains("Draft, not for signature").doesNotContain("from memory", "ask counsel");
    }

    @Test
    void aLicenseOfAnotherStateKeepsTheContractADraft() {
        Path job = ContractJobs.in(
                folder, "PA", whole -> {}, company -> ((ObjectNode) company.get("license")).put("state", "OH"));
        withWording(due("PA"), "PA");

        assertThat(ids(job)).contains("license-elsewhere");
        assertThat(PageText.all(ContractJobs.pdf(job)))
                .contains("Draft, not for signature")
                .doesNotContain("The house stands in PA.");
    }

    @Test
    void aStateThatWasNotGatheredGetsTheFloorAndIsToldSo() {
        assertThat(ids(ContractJobs.in(folder, "WY"))).contains("state-unread");
    }

    @Test
    void whatWasNotReadInTheLawIsToldToTheContractorOnly() {
        Path job = ContractJobs.in(folder, "CT");

        assertThat(ids(job)).contains("rules-unverified");
        assertThat(PageText.all(ContractJobs.pdf(job))).doesNotContain("not verified", "secondary source");
    }

    @ParameterizedTest
    @CsvSource({"2026-06-30, false", "2026-07-01, false", "2026-07-02, true"})
    void rulesThatWereGatheredAfterTheContractAreToldToTheContractorOnly(String gathered, boolean told)
            throws IOException {
        Path job = ContractJobs.in(folder, "CT");
        Files.writeString(
                folder.resolve("state-rules.json"),
                "{\"packs\": [{\"state\": \"CT\", \"asOf\": \"" + gathered + "\"}]}");

        assertThat(ids(job).contains("rules-later")).isEqualTo(told);
        assertThat(PageText.all(ContractJobs.pdf(job))).doesNotContain("gathered");
    }

    private List<LegalNotice> due(String state) {
        return StateRuleBook.bundled().find(state).orElseThrow().notices().stream()
                .filter(notice -> notice.when() != NoticeCase.SECURED_ON_THE_HOME)
                .toList();
    }

    /** What a contractor writes beside the job once counsel has given the words. */
    private void withWording(List<LegalNotice> notices, String state) {
        String known = notices.stream()
                .map(notice -> "{\"notice\": \"" + notice.name() + "\", \"wording\": \"" + wording(notice) + "\"}")
                .collect(Collectors.joining(", "));
        String file = "{\"packs\": [{\"state\": \"" + state + "\", \"counsel\": {\"by\": \"Cy Test\", \"on\":"
                + " \"2026-06-01\"}, \"notices\": [" + known + "]}]}";
        try {
            Files.writeString(folder.resolve("state-rules.json"), file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String wording(LegalNotice notice) {
        return "Test words that stand for the notice called " + notice.name()
                + ", long enough to run over the end of a line at any size that a law asks for in print.";
    }

    private static List<String> ids(Path job) {
        return ContractJobs.bid(job).findings().stream().map(Finding::id).toList();
    }
}
