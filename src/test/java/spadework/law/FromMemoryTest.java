// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.law.release.ReleaseForm;
import spadework.law.release.ReleaseKind;
import spadework.money.Dollars;

/** What of a state's rules nobody has read in any text is named before a contract is signed on it. */
class FromMemoryTest {
    private static final Counsel COUNSEL = new Counsel("A. Attorney", LocalDate.of(2026, 7, 1));

    /** Rules of which every part was read so far. */
    private static StateRules rules(String status, Optional<Counsel> counsel) {
        LegalNotice notice = new LegalNotice(
                "lien notice",
                Set.of(Content.LIEN_NOTICE),
                NoticePlace.BODY,
                10,
                false,
                false,
                Optional.of("Words."),
                false,
                Optional.empty(),
                NoticeCase.ALWAYS,
                status,
                "Z.C. 3");
        StateHoliday day = new StateHoliday("founders' day", new StateHoliday.OnDate(3, 2), status);
        Map<String, String> facts = new TreeMap<>(Map.of("cancel", status, "threshold", status, "bond", status));
        return new StateRules(
                "ZZ",
                "test",
                Optional.empty(),
                true,
                new DepositCap(DepositKind.NONE, 0, 1, Optional.empty(), Optional.empty(), false),
                new CancelRule(
                        3,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        status,
                        Optional.empty(),
                        false,
                        List.of(day),
                        Optional.empty()),
                List.of(new RequiredContent(Content.PRICE, "the price", status)),
                List.of(notice),
                List.of(new ReleaseForm(ReleaseKind.CONDITIONAL_FINAL, Optional.empty(), status, "Z.C. 4")),
                List.of(new LeastCover(CoverKind.INJURY, Dollars.of("50000.00"), Optional.empty(), status, "Z.C. 5")),
                Optional.empty(),
                new RuleSource(facts, List.of(), List.of("Z.C. 1", "Z.C. 2"), "2026-08-01", counsel));
    }

    private static List<Finding> found(StateRules rules) {
        StateRules federal = rules("R", Optional.empty());
        return ContentsCheck.of(
                        "ZZ",
                        new HouseLaw(federal, Optional.of(rules)),
                        EnumSet.allOf(Content.class),
                        Dollars.of("9000.00"),
                        false)
                .stream()
                .filter(finding -> finding.id().equals("rules-from-memory"))
                .toList();
    }

    @Test
    void eachPartThatIsKnownFromMemoryIsNamedInWords() {
        assertThat(rules("M", Optional.empty()).fromMemory())
                .containsExactly(
                        "bond",
                        "the right to cancel",
                        "from which price its law holds",
                        "price",
                        "lien notice",
                        "founders' day",
                        "the conditional final release",
                        "the least insurance for injury");
    }

    @ParameterizedTest
    @ValueSource(strings = {"R", "RX", "RS"})
    void whatWasReadSomewhereIsNotFromMemory(String status) {
        assertThat(rules(status, Optional.empty()).fromMemory()).isEmpty();
        assertThat(found(rules(status, Optional.empty()))).isEmpty();
    }

    @Test
    void counselWhoReadTheLawSettlesIt() {
        assertThat(rules("M", Optional.of(COUNSEL)).fromMemory()).isEmpty();
        assertThat(found(rules("M", Optional.of(COUNSEL)))).isEmpty();
    }

    @Test
    void findingIsAMustThatListsThem() {
        assertThat(found(rules("M", Optional.empty())))
                .containsExactly(new Finding(
                        "rules-from-memory",
                        Severity.MUST,
                        "ZZ",
                        Map.of(
                                "what",
                                "bond, the right to cancel, from which price its law holds, price, lien notice,"
                                        + " founders' day, the conditional final release,"
                                        + " the least insurance for injury"),
                        "Z.C. 1; Z.C. 2"));
    }
}
