// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Division with a short way for what comes out even. */
class QuotientTest {
    @Test
    void everyQuotientIsThatOf34DigitsToTheLastDigitAndWithItsScale() {
        Random random = new Random(5);
        for (int i = 0; i < 50_000; i++) {
            BigDecimal number = BigDecimal.valueOf(random.nextLong(-1_000_000_000, 1_000_000_000), random.nextInt(8));
            BigDecimal divisor = BigDecimal.valueOf(1 + random.nextInt(i % 2 == 0 ? 40 : 1_000_000), random.nextInt(5));
            assertThat(Quotient.of(number, divisor)).isEqualTo(number.divide(divisor, MathContext.DECIMAL128));
        }
    }

    @Test
    void nothingIsDividedByZero() {
        assertThatThrownBy(() -> Quotient.of(BigDecimal.ONE, BigDecimal.ZERO)).isInstanceOf(ArithmeticException.class);
    }
}
