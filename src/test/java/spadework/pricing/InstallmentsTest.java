// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Payment;
import spadework.measure.Percent;
import spadework.money.Dollars;

class InstallmentsTest {

    @Test
    void theLastPaymentTakesTheCent() {
        List<Due> dues = Installments.of(Dollars.of("10000.01"), List.of(pay("33"), pay("33"), pay("34")));
        assertThat(dues)
                .extracting(Due::amount)
                .containsExactly(Dollars.of("3300.00"), Dollars.of("3300.00"), Dollars.of("3400.01"));
    }

    /** A tenth of 1,234.56 is 123.456: a deposit of 123.46 would be more than a tenth. */
    @Test
    void aDepositIsCutDownNeverUp() {
        assertThat(Installments.of(Dollars.of("1234.56"), List.of(pay("10"), pay("90")))
                        .get(0)
                        .amount())
                .isEqualTo(Dollars.of("123.45"));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void paymentsAddToThePrice(long seed) {
        Random random = new Random(seed);
        Dollars price = Dollars.of(BigDecimal.valueOf(random.nextInt(10_000_000), 2));
        List<Payment> payments = new ArrayList<>();
        int left = 100;
        while (left > 0) {
            int share = Math.min(left, 1 + random.nextInt(40));
            payments.add(pay(Integer.toString(share)));
            left -= share;
        }
        List<Dollars> amounts =
                Installments.of(price, payments).stream().map(Due::amount).toList();
        assertThat(Dollars.total(amounts)).isEqualTo(price);
        assertThat(amounts).noneMatch(Dollars::isNegative);
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    private static Payment pay(String share) {
        return new Payment("when", Percent.of(share), false);
    }
}
