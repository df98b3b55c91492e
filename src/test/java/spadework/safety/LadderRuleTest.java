// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import spadework.measure.Length;
import spadework.paperwork.scope.StepFigure;

class LadderRuleTest {

    /** 29 CFR 1926.651(c)(2): 4 ft or more, 25 ft of lateral travel; 1926.1053(b)(1): 3 ft above the landing. */
    @Test
    void hasTheFiguresOfTheRule() {
        assertThat(LadderRule.asks(Length.ofFeet(3.99))).isFalse();
        assertThat(LadderRule.asks(Length.ofFeet(4))).isTrue();
        assertThat(LadderRule.figures()).containsExactly("within", "25 ft", "above", "3 ft");
    }

    @Test
    void stepsOfTheScopeNameTheSameFigures() {
        assertThat(StepFigure.LADDER_FROM.length()).isEqualTo(LadderRule.FROM);
        assertThat(StepFigure.LADDER_WITHIN.length()).isEqualTo(LadderRule.WITHIN);
        assertThat(StepFigure.LADDER_ABOVE.length()).isEqualTo(LadderRule.ABOVE_EDGE);
    }
}
