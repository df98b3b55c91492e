// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.intake.law.StateRuleBook;
import spadework.money.Dollars;
import spadework.press.template.Templates;

/** What a state's law wants in a contract is there, or it is named. */
class ContentsCheckTest {
    private static final StateRuleBook STATES = StateRuleBook.bundled();
    private static final Phrases PHRASES = new Phrases(Templates.bundled().words("words/findings.properties"));
    private static final Set<Content> ALL = EnumSet.allOf(Content.class);

    private static List<Finding> check(String state, Set<Content> holds, String price) {
        return ContentsCheck.of(state, STATES.at(state), holds, Dollars.of(price), false);
    }

    private static List<String> ids(List<Finding> findings) {
        return findings.stream().map(Finding::id).toList();
    }

    /** Thresholds of the state's contract law: Cal. BPC 7159, 73 P.S. 517.2, M.G.L. c.142A, ORC 4722, RCW 18.27.114. */
    @ParameterizedTest(name = "{0} at {1}: reached is {2}")
    @CsvSource(textBlock = """
            CA,   500.00, false
            CA,   500.01, true
            PA,   500.00, false
            PA,   500.01, true
            NJ,   500.00, false
            NJ,   500.01, true
            NY,   500.00, false
            NY,   500.01, true
            MA,  1000.00, false
            MA,  1000.01, true
            IL,  1000.00, false
            IL,  1000.01, true
            OH, 24999.99, false
            OH, 25000.00, true
            WA,   999.99, false
            WA,  1000.00, true
            MD,     1.00, true
            """)
    void stateLawReachesAContractFromItsThreshold(String state, String price, boolean reached) {
        boolean more = check(state, EnumSet.noneOf(Content.class), price).stream()
                        .filter(finding -> !finding.id().startsWith("rules-"))
                        .count()
                > ContentsCheck.of(
                                state,
                                new HouseLaw(STATES.federal(), Optional.empty()),
                                EnumSet.noneOf(Content.class),
                                Dollars.of(price),
                                false)
                        .size();
        assertThat(more).isEqualTo(reached);
    }

    @Test
    void eachMissingContentIsAMustThatNamesIt() {
        Set<Content> holds = EnumSet.complementOf(EnumSet.of(Content.SALESPERSON, Content.START_AND_COMPLETION));
        assertThat(check("MD", holds, "9000.00"))
                .filteredOn(finding -> finding.id().startsWith("content-"))
                .extracting(Finding::id, Finding::severity)
                .containsExactlyInAnyOrder(
                        tuple("content-salesperson", Severity.MUST),
                        tuple("content-start-and-completion", Severity.MUST));
        assertThat(ids(check("MD", ALL, "9000.00"))).noneMatch(id -> id.startsWith("content-"));
    }

    @Test
    void wordingThatWasNotGatheredIsWantingAndNeverMadeUp() {
        assertThat(check("FL", ALL, "9000.00"))
                .filteredOn(finding -> finding.id().equals("notice-unworded"))
                .extracting(finding -> finding.values().get("notice"))
                .containsExactly(
                        "lien law notice", "recovery fund notice", "defect claim notice", "right to cancel notice");
    }

    /** Fla. Stat. 713.015 and 489.1425: contracts over $2,500. */
    @ParameterizedTest
    @CsvSource({"2500.00, false", "2500.01, true"})
    void noticeIsDueAboveItsPrice(String price, boolean due) {
        assertThat(ContentsCheck.due(STATES.at("FL"), Dollars.of(price), false))
                .extracting(LegalNotice::name)
                .satisfies(
                        names -> assertThat(names.contains("lien law notice")).isEqualTo(due));
    }

    /** RCW 18.27.114: contracts of $1,000 or more. */
    @ParameterizedTest
    @CsvSource({"999.99, false", "1000.00, true"})
    void noticeOfAPackIsDueFromThePacksOwnThreshold(String price, boolean due) {
        assertThat(ContentsCheck.due(STATES.at("WA"), Dollars.of(price), false))
                .extracting(LegalNotice::name)
                .isEqualTo(due ? List.of("notice to customer") : List.of());
        assertThat(ids(check("WA", ALL, price)).contains("notice-unworded")).isEqualTo(due);
    }

    /** Fla. Stat. 489.119(5)(b) and ch. 558 know no price; only the two notices above do. */
    @ParameterizedTest
    @ValueSource(strings = {"900.00", "2500.00", "2500.01"})
    void whatHasNoThresholdIsWantedAtAnyPrice(String price) {
        List<Finding> missing = check("FL", EnumSet.noneOf(Content.class), price);
        assertThat(ids(missing)).contains("content-license-number");
        assertThat(missing)
                .extracting(finding -> finding.values().getOrDefault("notice", ""))
                .contains("defect claim notice");
        assertThat(ids(check("FL", EnumSet.of(Content.LICENSE_NUMBER), price)))
                .doesNotContain("content-license-number");
    }

    /** Where a notice has its price, the content that it is has none below it. */
    @ParameterizedTest
    @CsvSource({"2500.00, false", "2500.01, true"})
    void contentThatIsANoticeWaitsForTheNoticesPrice(String price, boolean wanted) {
        assertThat(check("FL", EnumSet.noneOf(Content.class), price))
                .extracting(finding -> finding.values().getOrDefault("notice", ""))
                .satisfies(names ->
                        assertThat(names.contains("recovery fund notice")).isEqualTo(wanted));
    }

    /** A list is as well read as its least read line. */
    @Test
    void noListOfContentsClaimsToBeBetterReadThanItsLines() {
        List<String> statuses = List.of("R", "RX", "RS", "M");
        STATES.byState()
                .values()
                .forEach(rules -> assertThat(rules.contents())
                        .as(rules.state())
                        .allSatisfy(required -> assertThat(statuses.indexOf(required.status()))
                                .isLessThanOrEqualTo(
                                        statuses.indexOf(rules.facts().get("contents")))));
    }

    /** A wording that the program carries itself is its own; prescribed ones come from counsel or the board. */
    @Test
    void noPrescribedWordingOfAStateIsCarried() {
        STATES.byState().values().stream()
                .flatMap(rules -> rules.notices().stream())
                .forEach(notice -> assertThat(
                                notice.prescribed() && notice.wording().isPresent())
                        .as(notice.name())
                        .isFalse());
    }

    /** Where a state sizes its own statement, its words are wanted from counsel. */
    @ParameterizedTest
    @CsvSource({"CA, 12", "MD, 10", "PA, 10", "NJ, 10", "TX, 10", "CT, 10"})
    void statementOfTheRightToCancelIsBoldAboveTheSignature(String state, int points) {
        assertThat(ContentsCheck.due(STATES.at(state), Dollars.of("9000"), false))
                .filteredOn(notice -> notice.serves().contains(Content.CANCELLATION_STATEMENT))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.points()).isEqualTo(points);
                    assertThat(notice.bold()).isTrue();
                    assertThat(notice.place()).isEqualTo(NoticePlace.ABOVE_THE_SIGNATURE);
                    assertThat(notice.wording()).isEmpty();
                });
    }

    /** Md. Bus. Reg. 8-501: 10 point bold on the first page, if the contract is secured on the home. */
    @Test
    void noticeOfAClaimOnTheHomeIsDueOnlyWhereThereIsOne() {
        assertThat(ContentsCheck.due(STATES.at("MD"), Dollars.of("9000"), true)).anySatisfy(notice -> {
            assertThat(notice.name()).isEqualTo("lien on the home");
            assertThat(notice.place()).isEqualTo(NoticePlace.FIRST_PAGE);
            assertThat(notice.points()).isEqualTo(10);
            assertThat(notice.bold()).isTrue();
        });
        assertThat(ContentsCheck.due(STATES.at("MD"), Dollars.of("9000"), false))
                .extracting(LegalNotice::name)
                .doesNotContain("lien on the home");
    }

    @Test
    void whatWasNotReadInTheLawItselfIsSaidInOneFinding() {
        STATES.byState().keySet().stream()
                .filter(state -> !state.equals(StateRules.FEDERAL))
                .forEach(state -> assertThat(check(state, ALL, "30000.00"))
                        .filteredOn(finding -> finding.id().equals("rules-unverified"))
                        .as(state)
                        .hasSize(1));
        assertThat(ids(check("OR", ALL, "30000.00"))).doesNotContain("rules-unverified");
    }

    @ParameterizedTest
    @EnumSource
    void everyContentHasItsWords(Content content) {
        Finding finding = new Finding(
                "content-" + content.words().replace(' ', '-'),
                Severity.MUST,
                "MD",
                Map.of("asks", "this", "law", "MD"),
                "here");
        assertThat(PHRASES.what(finding)).isEqualTo("MD wants this in the contract: this. It is missing.");
        assertThat(PHRASES.action(finding)).isNotBlank().doesNotContain("{");
    }

    /** A pack of rules of the test's own: every field of its findings is told, and how far its law was read. */
    private static StateRules pack(List<RequiredContent> contents, List<LegalNotice> notices) {
        StateRules federal = STATES.federal();
        return new StateRules(
                "ZZ",
                "test",
                Optional.empty(),
                true,
                federal.deposit(),
                federal.cancel(),
                contents,
                notices,
                List.of(),
                List.of(),
                Optional.empty(),
                new RuleSource(
                        Map.of("contents", "R", "cancel", "RS"),
                        List.of(),
                        List.of("Z.C. 1", "Z.C. 2"),
                        "2026-08-01",
                        Optional.empty()));
    }

    private static LegalNotice notice(Content serves, Optional<String> wording, Optional<Dollars> above) {
        return new LegalNotice(
                "test notice",
                Set.of(serves),
                NoticePlace.ABOVE_THE_SIGNATURE,
                12,
                true,
                true,
                wording,
                true,
                above,
                NoticeCase.ALWAYS,
                "RX",
                "Z.C. 3");
    }

    private static List<Finding> check(StateRules pack, String price) {
        return ContentsCheck.of(
                "ZZ",
                new HouseLaw(STATES.federal(), Optional.of(pack)),
                EnumSet.noneOf(Content.class),
                Dollars.of(price),
                false);
    }

    @Test
    void findingOfAMissingContentTellsWhatTheLawAsksAndHowFarItWasRead() {
        List<RequiredContent> contents = List.of(
                new RequiredContent(Content.SALESPERSON, "who sold it", "M"),
                new RequiredContent(Content.PRICE, "the price", "R"));
        assertThat(check(pack(contents, List.of()), "100.00"))
                .contains(
                        new Finding(
                                "content-salesperson",
                                Severity.MUST,
                                "ZZ",
                                Map.of("asks", "who sold it", "law", "ZZ"),
                                "Z.C. 1; Z.C. 2 (from memory; not verified)"),
                        new Finding(
                                "content-price",
                                Severity.MUST,
                                "ZZ",
                                Map.of("asks", "the price", "law", "ZZ"),
                                "Z.C. 1; Z.C. 2"),
                        new Finding(
                                "rules-unverified",
                                Severity.ADVISE,
                                "ZZ",
                                Map.of("facts", "cancel (secondary source)", "asOf", "2026-08-01"),
                                "Z.C. 1; Z.C. 2"));
    }

    @Test
    void findingOfAnUnwordedNoticeTellsItsTypeAndPlaceAndIsNotSaidTwice() {
        List<RequiredContent> contents = List.of(new RequiredContent(Content.WARRANTY, "a notice", "R"));
        StateRules pack = pack(contents, List.of(notice(Content.WARRANTY, Optional.empty(), Optional.empty())));
        assertThat(check(pack, "100.00"))
                .contains(new Finding(
                        "notice-unworded",
                        Severity.MUST,
                        "ZZ",
                        Map.of(
                                "notice", "test notice",
                                "place", "above the signature",
                                "type", "at least 12 point, bold, capitals",
                                "law", "ZZ"),
                        "Z.C. 3 (excerpt read; not verified)"))
                .noneMatch(finding -> finding.id().equals("content-warranty"));
    }

    @Test
    void typeOfANoticeNamesOnlyWhatTheLawAsks() {
        LegalNotice plain = new LegalNotice(
                "plain notice",
                Set.of(Content.WARRANTY),
                NoticePlace.BODY,
                1,
                false,
                false,
                Optional.empty(),
                true,
                Optional.empty(),
                NoticeCase.ALWAYS,
                "R",
                "Z.C. 4");
        assertThat(check(pack(List.of(), List.of(plain)), "100.00"))
                .filteredOn(finding -> finding.id().equals("notice-unworded"))
                .filteredOn(finding -> finding.about().equals("ZZ"))
                .filteredOn(finding -> finding.citation().equals("Z.C. 4"))
                .extracting(finding -> finding.values().get("type"))
                .containsExactly("at least 1 point");
    }

    /** What the program words itself is missing where the contract lacks it, above the notice's price only. */
    @ParameterizedTest(name = "{0}: wanted is {1}")
    @CsvSource({"500.00, false", "500.01, true"})
    void wordedNoticeThatIsNotThereIsMissingAboveItsPrice(String price, boolean wanted) {
        List<RequiredContent> contents = List.of(new RequiredContent(Content.WARRANTY, "a notice", "R"));
        LegalNotice worded = notice(Content.WARRANTY, Optional.of("Words."), Optional.of(Dollars.of("500.00")));
        List<Finding> found = check(pack(contents, List.of(worded)), price);
        assertThat(ids(found).contains("content-warranty")).isEqualTo(wanted);
        assertThat(found).noneMatch(finding -> finding.citation().startsWith("Z.C. 3"));
    }

    /** The price of one notice says nothing of a content that another serves. */
    @Test
    void priceOfANoticeHoldsForItsOwnContentAlone() {
        List<RequiredContent> contents = List.of(new RequiredContent(Content.SALESPERSON, "who sold it", "R"));
        LegalNotice dear = notice(Content.WARRANTY, Optional.empty(), Optional.of(Dollars.of("500.00")));
        assertThat(ids(check(pack(contents, List.of(dear)), "100.00"))).contains("content-salesperson");
    }

    /** A worded notice of the same content without a price of its own is wanted at any price. */
    @Test
    void noticeWithoutAPriceIsWantedAtAnyPrice() {
        List<RequiredContent> contents = List.of(new RequiredContent(Content.WARRANTY, "a notice", "R"));
        LegalNotice worded = notice(Content.WARRANTY, Optional.of("Words."), Optional.empty());
        assertThat(ids(check(pack(contents, List.of(worded)), "1.00"))).contains("content-warranty");
    }

    @ParameterizedTest
    @CsvSource({"R, read", "RX, excerpt read", "RS, secondary source", "M, from memory"})
    void howFarARuleWasReadHasItsWords(String status, String words) {
        assertThat(ReadStatus.words(status)).isEqualTo(words);
    }

    /** A content that waits for its notice's price is not wanted because another notice is due. */
    @Test
    void noticeThatIsDueBringsNoOtherContentForward() {
        List<RequiredContent> contents = List.of(new RequiredContent(Content.WARRANTY, "a notice", "R"));
        LegalNotice dear = notice(Content.WARRANTY, Optional.of("Words."), Optional.of(Dollars.of("500.00")));
        LegalNotice due = notice(Content.LIEN_NOTICE, Optional.of("Words."), Optional.empty());
        assertThat(ids(check(pack(contents, List.of(dear, due)), "500.00"))).doesNotContain("content-warranty");
        assertThat(ids(check(pack(contents, List.of(dear, due)), "500.01"))).contains("content-warranty");
    }

    /** 16 CFR 429.1(a), (b), (d), (e): what the federal rule wants in a contract signed at home, in any state. */
    @ParameterizedTest
    @ValueSource(strings = {"WY", "MD"})
    void federalContentsAreWantedInEveryState(String state) {
        assertThat(ids(check(state, EnumSet.noneOf(Content.class), "9000.00")))
                .contains(
                        "content-transaction-date",
                        "content-cancellation-form",
                        "content-last-day-to-cancel",
                        "content-oral-notice-acknowledged",
                        "content-no-waiver");
    }
}
