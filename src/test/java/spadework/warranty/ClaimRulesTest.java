// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Fault;
import spadework.finding.Finding;

class ClaimRulesTest {
    private static final Warranty WARRANTY = Warranties.of("2026-014-W1");

    @ParameterizedTest(name = "made {0}, {1} working days: answered by {2}. {3}")
    @CsvSource(textBlock = """
        2027-03-01, 5, 2027-03-08, Monday to Monday
        2027-03-05, 1, 2027-03-08, a Friday's next working day is Monday
        2027-03-06, 1, 2027-03-08, a Saturday counts from Monday on
        2027-03-07, 5, 2027-03-12, a Sunday as well
        2026-12-24, 2, 2026-12-28, a holiday is not left out: the earlier day
        """)
    void answerIsDueAfterWorkingDays(LocalDate made, int days, LocalDate due, String why) {
        assertThat(ClaimRules.replyDay(made, days)).as(why).isEqualTo(due);
    }

    @ParameterizedTest(name = "made Monday 1 March, decided {0}: {1}")
    @CsvSource(textBlock = """
        2027-03-02, ''
        2027-03-09, ''
        2027-03-10, claim-late
        2027-05-01, claim-late
        """)
    void decisionAfterThePromisedDaysIsAFinding(LocalDate decided, String finding) {
        Claim claim = claim(seen("2027-03-01"), step(decided.toString(), "inspected", "2027-03-02", "covered", "yes"));
        assertThat(ClaimRules.findings(WARRANTY, claim))
                .extracting(Finding::id)
                .containsExactlyElementsOf(ids(finding));
    }

    /** Ten working days from Monday March 1 end on Monday March 15; five more, where nobody looked, on the 22nd. */
    @ParameterizedTest(name = "looked at on {0}, decided on {1}: {2}")
    @CsvSource(textBlock = """
        2027-03-15, 2027-03-22, ''
        2027-03-16, 2027-03-23, claim-look-late
        '',         2027-03-22, ''
        '',         2027-03-23, claim-late
        """)
    void lookAfterThePromisedDaysIsAFinding(String looked, LocalDate decided, String finding) {
        ClaimStep step = looked.isEmpty()
                ? step(decided.toString(), "covered", "yes")
                : step(decided.toString(), "inspected", looked, "covered", "yes");
        assertThat(ClaimRules.findings(WARRANTY, claim(seen("2027-03-01"), step)))
                .extracting(Finding::id)
                .containsExactlyElementsOf(ids(finding));
    }

    @ParameterizedTest(name = "turned down for \"{0}\": {1}")
    @CsvSource(textBlock = """
        Condensation,                                  holds
        condensation.,                                 holds
        '  CONDENSATION ',                             holds
        Water that comes over the top of the wall.,    holds
        'Keep the gutters clean, each spring and fall', holds
        Condensed,                                     refused
        Acts of nature,                                refused
        ,                                              refused
        """)
    void claimIsTurnedDownOnlyByWhatTheCertificateSays(String clause, String outcome) {
        ClaimStep down = clause == null
                ? step("2027-03-02", "inspected", "2027-03-02", "covered", "no", "cause", "a burst pipe")
                : step("2027-03-02", "inspected", "2027-03-02", "covered", "no", "cause", "steam", "clause", clause);
        List<Fault> faults = ClaimRules.faults(WARRANTY, claim(seen("2027-03-01"), down));
        assertThat(faults.isEmpty() ? "holds" : "refused").isEqualTo(outcome);
        assertThat(faults)
                .allSatisfy(fault -> assertThat(fault.allowed())
                        .contains("Condensation | Keep the gutters clean, each spring and fall. | "));
    }

    @Test
    void clauseIsKeptInTheCertificatesOwnWords() {
        ClaimStep step = step("2027-03-02", "covered", "no", "clause", " condensation. ");
        assertThat(ClaimRules.inItsWords(WARRANTY, step).clause()).contains("Condensation");
    }

    @ParameterizedTest(name = "{0}: {1} of {2}, {3}")
    @CsvSource(textBlock = """
        2027-02-28, inspected, 2027-02-28, an entry before the claim
        2027-03-02, inspected, 2027-03-03, looked at after the entry
        2027-03-02, closed,    2027-02-27, closed before it was made
        2027-03-02, closed,    2027-03-02, closed and nobody decided
        2027-03-02, inspected, 2027-02-28, looked at before it was made
        2027-03-02, cost,      -1.00,      a cost below nothing
        """)
    void entryThatCannotBeIsRefused(String on, String fact, String value, String why) {
        Map<String, String> facts = new LinkedHashMap<>(Map.of(fact, value));
        assertThat(ClaimRules.faults(WARRANTY, claim(seen("2027-03-01"), ClaimStep.of(LocalDate.parse(on), facts))))
                .as(why)
                .isNotEmpty();
    }

    /** A claim made after the term, of what was seen within it, is taken: what failed in the term counts. */
    @Test
    void claimElsewhereOrOutOfTermIsWrittenDownAndTold() {
        Claim claim = claim(step("2041-04-03", "seen", "water", "since", "2041-03-30", "wall", "C"));
        assertThat(ClaimRules.faults(WARRANTY, claim)).isEmpty();
        assertThat(ClaimRules.findings(WARRANTY, claim))
                .extracting(Finding::id)
                .containsExactly("claim-elsewhere", "claim-out-of-term");
        assertThat(ClaimRules.findings(WARRANTY, claim(step("2041-04-02", "seen", "water", "wall", "d1"))))
                .isEmpty();
    }

    @ParameterizedTest(name = "made {0}, seen since {1}: {2}")
    @CsvSource(textBlock = """
        2026-04-02,           , before the warranty begins
        2027-03-01, 2026-04-02, before the warranty begins
        2041-04-03,           , after the last part ended
        2041-04-09, 2041-04-03, after the last part ended
        2027-03-01, 2027-03-02, after the day of the claim
        """)
    void claimBeforeOrAfterCoverIsRefused(String on, String since, String why) {
        ClaimStep made = since == null ? seen(on) : step(on, "seen", "water", "since", since);
        assertThat(ClaimRules.faults(WARRANTY, claim(made)))
                .extracting(Fault::found)
                .anyMatch(found -> found.contains(why));
    }

    @ParameterizedTest(name = "clause \"{0}\" without a cause: {1}")
    @CsvSource(textBlock = """
        'Keep the gutters clean, each spring and fall', a missed duty alone
        Condensation,                                   no cause
        """)
    void denialNamesTheCauseAndAMissedDutyAloneDeniesNothing(String clause, String found) {
        ClaimStep down = step("2027-03-02", "inspected", "2027-03-02", "covered", "no", "clause", clause);
        assertThat(ClaimRules.faults(WARRANTY, claim(seen("2027-03-01"), down)))
                .singleElement()
                .extracting(Fault::found)
                .isEqualTo(found);
    }

    @Test
    void claimTurnedDownUnseenIsToldUntilSomebodyLooks() {
        Claim claim = claim(seen("2027-03-01"), step("2027-03-02", "covered", "no", "clause", "Condensation"));
        assertThat(ClaimRules.findings(WARRANTY, claim)).extracting(Finding::id).containsExactly("claim-unseen");
        assertThat(ClaimRules.findings(WARRANTY, claim.and(step("2027-03-04", "inspected", "2027-03-04"))))
                .isEmpty();
    }

    @Test
    void laterStepsAddAndTheStateFollows() {
        Claim claim = claim(seen("2027-03-01"));
        assertThat(claim.state().words()).isEqualTo("open");
        claim = claim.and(step("2027-03-03", "inspected", "2027-03-03"));
        assertThat(claim.state().words()).isEqualTo("inspected");
        claim = claim.and(step("2027-03-04", "covered", "no", "clause", "Condensation"));
        assertThat(claim.state().words()).isEqualTo("not covered");
        claim = claim.and(step("2027-03-05", "covered", "yes", "remedy", "joint sealed", "cost", "410.00"));
        assertThat(claim.state().words()).isEqualTo("covered");
        assertThat(claim.decided()).as("the first answer").contains(LocalDate.of(2027, 3, 4));
        claim = claim.and(step("2027-03-20", "closed", "2027-03-20"));
        assertThat(claim.state().words()).isEqualTo("closed");
        assertThat(claim.last(ClaimStep::remedy)).contains("joint sealed");
    }

    private static Claim claim(ClaimStep... steps) {
        return new Claim("2026-014-CL1", List.of(steps));
    }

    private static ClaimStep seen(String on) {
        return step(on, "certificate", "2026-014-W1", "seen", "water at the joint", "wall", "A");
    }

    private static ClaimStep step(String on, String... facts) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < facts.length; i += 2) {
            map.put(facts[i], facts[i + 1]);
        }
        ClaimStep step = ClaimStep.of(LocalDate.parse(on), map);
        assertThat(step.facts()).as("facts are read as they were written").containsExactlyInAnyOrderEntriesOf(map);
        return step;
    }

    private static List<String> ids(String finding) {
        return finding.isEmpty() ? List.of() : List.of(finding);
    }
}
