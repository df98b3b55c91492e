// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.Length;

class TrenchLimitsTest {

    /** 29 CFR 1926.652(b), App. F: more than 20 feet is an engineer's, 20 feet or less is not; 6.096 m are 20 ft. */
    @ParameterizedTest(name = "{0}: engineered {1}")
    @CsvSource({
        "19 ft 11.5 in, false",
        "20 ft,         false",
        "6.096 m,       false",
        "240 in,        false",
        "20 ft 0.01 in, true",
        "6.1 m,         true",
        "21 ft,         true"
    })
    void overTwentyFeetAnEngineerDesignsIt(String depth, boolean engineered) throws Exception {
        assertThat(TrenchLimits.isEngineered(Length.parse(depth))).isEqualTo(engineered);
    }

    /** Levels taken from one another leave a last digit that nobody measured. */
    @ParameterizedTest(name = "{0} less {1}")
    @CsvSource({"100.3, 80.3", "97.1, 77.1", "20.7, 0.7"})
    void theNoiseOfLevelsMakesNoEngineerOfTwentyFeet(double grade, double bottom) {
        assertThat(TrenchLimits.isEngineered(Length.ofFeet(grade - bottom))).isFalse();
    }
}
