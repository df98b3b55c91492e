// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.Percent;
import spadework.money.Dollars;

class SalesTaxTest {

    /** Streamlined Sales and Use Tax Agreement s. 324: up when the third decimal is greater than four, once. */
    @ParameterizedTest(name = "{0} at {1}%: {2}")
    @CsvSource(textBlock = """
            123.40,  6.25, 7.71
            100.50,  7,    7.04
            2.50,    5,    0.13
            1.07,    7,    0.07
            1000.07, 7,    70.00
            3.21,    7,    0.22
            """)
    void roundsTheExactProductOnce(String amount, String rate, String tax) {
        assertThat(SalesTax.on(Dollars.of(amount), Percent.of(rate))).isEqualTo(Dollars.of(tax));
    }

    /** s. 324 lets the seller elect item or invoice: three items of 1.07 at 7% differ by a cent. */
    @Test
    void byItemAndByInvoiceDiffer() {
        Percent rate = Percent.of("7");
        Dollars item = Dollars.of("1.07");
        List<Dollars> taxes = Collections.nCopies(3, SalesTax.on(item, rate));
        assertThat(Dollars.total(taxes)).isEqualTo(Dollars.of("0.21"));
        assertThat(SalesTax.on(Dollars.total(Collections.nCopies(3, item)), rate))
                .isEqualTo(Dollars.of("0.22"));
    }
}
