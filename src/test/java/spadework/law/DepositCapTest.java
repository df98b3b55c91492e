// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.intake.law.StateRuleBook;
import spadework.money.Dollars;

class DepositCapTest {
    private static final StateRuleBook STATES = StateRuleBook.bundled();

    @ParameterizedTest(name = "{0}, price {1}, special order {2}: {3} ({4})")
    @CsvSource(textBlock = """
            CA, 8000.00,  0,    800.00,  a tenth is less than 1000 (BPC 7159.5)
            CA, 10000.00, 0,    1000.00, both the same
            CA, 18000.00, 0,    1000.00, 1000 is less than a tenth
            MD, 10000.00, 0,    3333.33, one third rounds down (Bus. Reg. 8-617)
            MD, 14999.99, 0,    4999.99, one third exactly 4999.996…
            CA, 10000.09, 0,    1000.00, the sum when a tenth is 1000.009
            CA, 9999.99,  0,    999.99,  a tenth of 999.999 rounds down
            PA, 5000.00,  0,    none,    at 5000 and not over it (73 P.S. 517.9)
            PA, 5000.01,  0,    1666.67, over 5000: one third of 1666.67
            PA, 5000.00,  1200, none,    at 5000 with a special order
            PA, 9000.00,  0,    3000.00, one third
            PA, 9000.00,  1200, 4200.00, and the special order on top
            MA, 9000.00,  1200, 3000.00, the greater of the two (c. 142A s. 2)
            MA, 9000.00,  4000, 4000.00, the greater of the two
            OH, 24999.99, 0,    none,    under 25000 (ORC 4722.03)
            OH, 25000.00, 0,    2500.00, a tenth at 25000
            OH, 25000.00, 1200, 3700.00, special-order items are excepted
            MA, 10000.00, 0,    3333.33, one third rounds down
            MA, 9000.00,  3000, 3000.00, both the same: never one on top of the other
            FL, 20000.00, 0,    none,    a duty and no limit (489.126)
            NY, 20000.00, 0,    none,    held in trust and no limit (GBL 36-A)
            VA, 20000.00, 0,    none,    none found
            NJ, 20000.00, 0,    none,    none found
            NC, 20000.00, 0,    none,    none found
            IL, 20000.00, 0,    none,    none found
            TX, 20000.00, 0,    none,    none found
            WA, 20000.00, 0,    none,    none found
            CT, 20000.00, 0,    none,    none found
            """)
    void capByKind(String state, String price, String special, String cap, String why) {
        Optional<Dollars> limit =
                STATES.find(state).orElseThrow().deposit().limit(Dollars.of(price), Dollars.of(special));
        assertThat(limit.map(Dollars::plain).orElse("none")).as(why).isEqualTo(cap);
    }
}
