// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.intake.law.StateRuleBook;

class CancellationTest {

    @ParameterizedTest(name = "{0}, signed {1}, age {2}: {3} ({4})")
    @CsvSource(textBlock = """
            MD, 2026-07-01, 40, 2026-07-08, five days by Maryland's own holidays (Com. Law 14-302.1)
            MD, 2026-07-01, 64, 2026-07-08, not yet 65
            MD, 2026-07-01, 65, 2026-07-10, seven days from 65
            MD, 2026-07-01, ,   2026-07-10, an unknown age counts as 65
            CA, 2026-07-01, 40, 2026-07-07, three days and the later reading of Saturday
            CA, 2026-07-01, 65, 2026-07-09, five days from 65
            CT, 2026-01-16, 40, 2026-01-22, the later of two readings on Saturday
            OH, 2026-07-02, 40, 2026-07-08, the federal floor read safely
            WY, 2026-07-01, 40, 2026-07-07, a state that was not gathered gets the federal floor
            """)
    void theLatestOfEveryRuleThatFits(String state, LocalDate signed, Integer age, LocalDate last, String why) {
        Cancellation cancellation = Cancellation.of(
                new Cancellation.Signed(signed, Optional.empty(), Optional.ofNullable(age), Optional.empty()),
                StateRuleBook.bundled().at(state));
        assertThat(cancellation.lastDay()).as(why).isEqualTo(last);
        assertThat(cancellation.deadlines().get(0).rule()).isEqualTo("US-FTC");
    }

    /**
     * The rules side by side on every signing day: the latest is printed, and Maryland's may end before the federal.
     */
    @ParameterizedTest(name = "signed {0}")
    @CsvSource(textBlock = """
            # signed,   MD 40,      MD 65,      CA 40,      CA 65
            2026-01-16, 2026-01-22, 2026-01-24, 2026-01-22, 2026-01-26
            2026-05-22, 2026-05-29, 2026-06-01, 2026-05-28, 2026-06-01
            2026-06-17, 2026-06-23, 2026-06-25, 2026-06-23, 2026-06-25
            2026-07-01, 2026-07-08, 2026-07-10, 2026-07-07, 2026-07-09
            2026-07-02, 2026-07-09, 2026-07-11, 2026-07-08, 2026-07-10
            2026-09-03, 2026-09-10, 2026-09-12, 2026-09-09, 2026-09-11
            2026-11-10, 2026-11-17, 2026-11-19, 2026-11-16, 2026-11-18
            2026-11-25, 2026-12-02, 2026-12-04, 2026-12-01, 2026-12-03
            2026-12-23, 2026-12-30, 2027-01-02, 2026-12-29, 2026-12-31
            2026-12-31, 2027-01-07, 2027-01-09, 2027-01-06, 2027-01-08
            2027-06-16, 2027-06-22, 2027-06-24, 2027-06-22, 2027-06-24
            2027-07-02, 2027-07-08, 2027-07-10, 2027-07-08, 2027-07-12
            2027-12-23, 2027-12-30, 2028-01-03, 2027-12-29, 2028-01-03
            """)
    void marylandAndCaliforniaByAge(
            LocalDate signed,
            LocalDate maryland,
            LocalDate marylandOld,
            LocalDate california,
            LocalDate californiaOld) {
        assertThat(lastDay("MD", signed, 40)).isEqualTo(maryland);
        assertThat(lastDay("MD", signed, 65)).isEqualTo(marylandOld);
        assertThat(lastDay("CA", signed, 40)).isEqualTo(california);
        assertThat(lastDay("CA", signed, 65)).isEqualTo(californiaOld);
    }

    private static LocalDate lastDay(String state, LocalDate signed, int age) {
        return Cancellation.of(
                        new Cancellation.Signed(signed, Optional.empty(), Optional.of(age), Optional.empty()),
                        StateRuleBook.bundled().at(state))
                .lastDay();
    }

    /** N.J.S.A. 56:8-151: the third business day after a copy is received; the federal days start at signing. */
    @ParameterizedTest(name = "signed {0}, received {1}: {2}")
    @CsvSource(textBlock = """
            2026-07-01, ,           2026-07-07, the copy was handed over at signing
            2026-07-01, 2026-07-01, 2026-07-07, the same said
            2026-07-01, 2026-07-08, 2026-07-13, a week later
            2026-07-01, 2026-07-03, 2026-07-08, received on the day on which Independence Day is observed
            """)
    void daysOfNewJerseyStartWhenTheCopyIsReceived(LocalDate signed, LocalDate received, LocalDate last) {
        StateRules rules = StateRuleBook.bundled().find("NJ").orElseThrow();
        assertThat(rules.cancel().fromReceipt()).isTrue();
        Cancellation cancellation = Cancellation.of(
                new Cancellation.Signed(signed, Optional.ofNullable(received), Optional.empty(), Optional.empty()),
                new HouseLaw(StateRuleBook.bundled().federal(), Optional.of(rules)));
        assertThat(cancellation.lastDay()).isEqualTo(last);
        assertThat(cancellation.deadlines().get(0).last()).isEqualTo(LocalDate.of(2026, 7, 7));
    }

    /** A copy dated before the signing is no signed copy: the days start at signing. */
    @Test
    void copyReceivedBeforeSigningStartsNoDays() {
        LocalDate signed = LocalDate.of(2026, 7, 1);
        HouseLaw law = StateRuleBook.bundled().at("NJ");
        assertThat(Cancellation.of(
                        new Cancellation.Signed(
                                signed, Optional.of(signed.minusDays(7)), Optional.empty(), Optional.empty()),
                        law))
                .isEqualTo(Cancellation.of(
                        new Cancellation.Signed(signed, Optional.empty(), Optional.empty(), Optional.empty()), law));
    }
}
