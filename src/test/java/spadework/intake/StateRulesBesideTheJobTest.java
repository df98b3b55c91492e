// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.finding.Fault;
import spadework.intake.law.StateRuleBook;
import spadework.intake.source.JsonPass;
import spadework.intake.source.SourceFile;
import spadework.law.LegalNotice;
import spadework.law.StateRules;

/** A file beside the job changes what it names and keeps the rest. */
class StateRulesBesideTheJobTest {

    private static StateRules changed(String state, String packs) {
        SourceFile sheet = JsonPass.over("state-rules.json", "{\"packs\": " + packs + "}");
        StateRuleBook book = StateRuleBook.bundled().changedBy(sheet);
        assertThat(sheet.faults()).isEmpty();
        return book.find(state).orElseThrow();
    }

    private static List<String> faults(String packs) {
        SourceFile sheet = JsonPass.over("state-rules.json", "{\"packs\": " + packs + "}");
        StateRuleBook.bundled().changedBy(sheet);
        return sheet.faults().stream().map(Fault::text).toList();
    }

    @Test
    void wordingFromCounselIsAddedToAKnownNotice() {
        StateRules rules = changed("FL", """
                [{"state": "FL", "notices": [{"notice": "lien law notice", "wording": "As counsel gave it."}]}]""");
        LegalNotice notice = rules.notices().get(0);
        assertThat(notice.wording()).contains("As counsel gave it.");
        assertThat(notice.points()).as("what is not named stays").isEqualTo(12);
        StateRules bundled = StateRuleBook.bundled().find("FL").orElseThrow();
        assertThat(rules.notices()).as("none more, none less").hasSameSizeAs(bundled.notices());
        assertThat(rules.deposit()).isEqualTo(bundled.deposit());
    }

    @Test
    void newStateHasToBeWhole() {
        assertThat(faults("[{\"state\": \"ME\"}]"))
                .anyMatch(fault -> fault.contains("no \"title\""))
                .anyMatch(fault -> fault.contains("no \"deposit\""))
                .anyMatch(fault -> fault.contains("no \"cancel\""))
                .anyMatch(fault -> fault.contains("no \"asOf\""));
    }

    /** Days for an older buyer without the age from which they hold would silently give nobody a longer right. */
    @Test
    void ageAndDaysOfAnOlderBuyerStandTogether() {
        assertThat(faults("[{\"state\": \"MD\", \"cancel\": {\"days\": 5, \"seniorDays\": 7}}]"))
                .anyMatch(fault -> fault.contains("\"seniorDays\" alone"));
        assertThat(faults("[{\"state\": \"MD\", \"cancel\": {\"days\": 5, \"seniorAge\": 65}}]"))
                .anyMatch(fault -> fault.contains("\"seniorAge\" alone"));
        assertThat(faults("[{\"state\": \"MD\", \"cancel\": {\"days\": 5, \"seniorDays\": 7, \"seniorAge\": 65}}]"))
                .isEmpty();
    }

    @Test
    void everyFaultIsToldAtOnce() {
        assertThat(faults("""
                [{"state": "MD", "deposit": {"kind": "half", "share": "0.33"}, "threshold": "500",
                  "notices": [{"notice": "x", "points": 3}], "colour": 1}]""")).hasSizeGreaterThanOrEqualTo(6);
    }
}
