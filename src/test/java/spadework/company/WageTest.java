// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.Percent;
import spadework.money.Dollars;

class WageTest {

    /** Published example of a remodeling trade magazine; it prints ".565%" and means 56.5%. */
    @Test
    void loadedWageIsTheWageAndItsBurden() {
        Wage wage = new Wage(Dollars.of("20.00"), Percent.of("56.5"));

        assertThat(wage.loaded().amount()).isEqualByComparingTo("31.30");
    }

    @ParameterizedTest(name = "{0} with {1}% is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # no burden leaves the wage; a third decimal is kept until the price is rounded
            20.00 | 0    | 20.00
            21.27 | 43.3 | 30.47991
            """)
    void burdenIsExact(String hourly, String burden, String loaded) {
        assertThat(new Wage(Dollars.of(hourly), Percent.of(burden)).loaded().amount())
                .isEqualByComparingTo(loaded);
    }
}
