// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import spadework.intake.law.StateRuleBook;
import spadework.intake.source.JsonPass;
import spadework.intake.source.SourceFile;

/** Whatever a file of state rules says, it is read or refused with faults. */
class StateRulesFuzzTest {
    private static final StateRuleBook BUNDLED = StateRuleBook.bundled();

    @FuzzTest
    void rulesAreReadOrRefused(byte[] file) {
        SourceFile sheet = JsonPass.over("state-rules.json", new String(file, StandardCharsets.UTF_8));
        BUNDLED.changedBy(sheet);
        ReadableMessage.hold(sheet.faults());
    }
}
