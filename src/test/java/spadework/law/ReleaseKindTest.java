// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.intake.law.StateRuleBook;
import spadework.law.release.ReleaseForm;
import spadework.law.release.ReleaseKind;

/** The four releases of Cal. Civ. Code 8132, 8134, 8136 and 8138. */
class ReleaseKindTest {

    /** 8132 and 8136 wait for the money, 8134 and 8138 do not; 8136 and 8138 are for the last payment. */
    @ParameterizedTest(name = "last {0}, paid {1}: {2}")
    @CsvSource({
        "false, false, CONDITIONAL_PROGRESS,   true,  false, conditional progress",
        "false, true,  UNCONDITIONAL_PROGRESS, false, false, unconditional progress",
        "true,  false, CONDITIONAL_FINAL,      true,  true,  conditional final",
        "true,  true,  UNCONDITIONAL_FINAL,    false, true,  unconditional final"
    })
    void releaseForABill(
            boolean last, boolean paid, ReleaseKind kind, boolean conditional, boolean isFinal, String words) {
        assertThat(ReleaseKind.of(last, paid)).isEqualTo(kind);
        assertThat(kind.isConditional()).isEqualTo(conditional);
        assertThat(kind.isFinal()).isEqualTo(isFinal);
        assertThat(kind.words()).isEqualTo(words);
    }

    /** A state that prescribes a release prescribes each kind at most once; one without has none. */
    @Test
    void formOfAKind() {
        for (StateRules rules : StateRuleBook.bundled().byState().values()) {
            for (ReleaseKind kind : ReleaseKind.values()) {
                List<ReleaseForm> forms = rules.releases().stream()
                        .filter(form -> form.release() == kind)
                        .toList();
                assertThat(forms).as(rules.state()).hasSizeLessThan(2);
                assertThat(rules.release(kind))
                        .as(rules.state())
                        .isEqualTo(forms.stream().findFirst());
            }
        }
        StateRules california = StateRuleBook.bundled().find("CA").orElseThrow();
        assertThat(Arrays.stream(ReleaseKind.values()).map(california::release)).allMatch(form -> form.isPresent());
    }
}
