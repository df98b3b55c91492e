// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Written as the formatter of the Java library writes the same numbers. */
class DigitsTest {
    private static final int ENOUGH = 20_000;

    @Test
    void numbersOfAnySizeReadAsTheLibraryWritesThem() {
        Random random = new Random(7);
        for (int i = 0; i < ENOUGH; i++) {
            int decimals = random.nextInt(5);
            double number = (random.nextDouble() + 1e-9) * Math.pow(10, random.nextInt(10) - 2);
            assertThat(Digits.fixed(number, decimals))
                    .isEqualTo(String.format(Locale.ROOT, "%." + decimals + "f", number));
            BigDecimal exact = BigDecimal.valueOf(random.nextLong() >> random.nextInt(50), random.nextInt(6));
            BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP);
            assertThat(Digits.grouped(exact, decimals))
                    .isEqualTo(String.format(Locale.ROOT, "%,." + decimals + "f", rounded));
        }
    }

    /** Both sides of a half and of a thousand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.005|2|0.01",
                "0.0049|2|0.00",
                "999.995|2|1,000.00",
                "999.994|2|999.99",
                "-1306.5|1|-1,306.5",
                "-999|0|-999",
                "-1000|0|-1,000",
                "1234567|0|1,234,567"
            })
    void halvesGoUpAndThousandsAreMarked(BigDecimal value, int decimals, String text) {
        assertThat(Digits.grouped(value, decimals)).isEqualTo(text);
    }

    @Test
    void whatIsNoNumberIsNotWrittenAsOne() {
        assertThat(Digits.fixed(Double.NaN, 2)).isEqualTo("NaN");
    }
}
