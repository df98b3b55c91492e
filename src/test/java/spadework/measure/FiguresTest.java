// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is printed is what is multiplied. */
class FiguresTest {

    @ParameterizedTest(name = "{0} {1} counted is printed as {2}, measured as {3}")
    @CsvSource(delimiter = '|', textBlock = """
            # counted in the trench: every decimal that was agreed on
            1.25    | CUBIC_YARD | 1.25 cy     | 1.3 cy
            1.167   | CUBIC_YARD | 1.167 cy    | 1.2 cy
            -0.125  | CUBIC_YARD | \u22120.125 cy | \u22120.1 cy
            1234.75 | FOOT       | 1,234.75 ft | 1,234.8 ft
            2.5     | EACH       | 2.5 ea      | 3 ea
            # never fewer decimals than the unit has
            3       | CUBIC_YARD | 3.0 cy      | 3.0 cy
            1.20    | CUBIC_YARD | 1.2 cy      | 1.2 cy
            100     | EACH       | 100 ea      | 100 ea
            12.5    | DOLLAR     | $12.50      | $12.50
            """)
    void whatIsCountedKeepsItsDecimals(BigDecimal value, Unit unit, String counted, String measured) {
        assertThat(Figures.counted(value, unit)).isEqualTo(counted);
        assertThat(Figures.withUnit(value, unit)).isEqualTo(measured);
    }
}
