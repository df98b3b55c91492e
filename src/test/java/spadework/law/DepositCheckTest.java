// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.intake.law.StateRuleBook;
import spadework.money.Dollars;

/** A deposit at the lawful figure passes; a cent more is a stop that names it. */
class DepositCheckTest {
    private static final StateRuleBook STATES = StateRuleBook.bundled();

    private static List<Finding> check(String state, String price, String deposit, String special) {
        return DepositCheck.of(state, STATES.at(state), Dollars.of(price), Dollars.of(deposit), Dollars.of(special));
    }

    @ParameterizedTest(name = "{0}, price {1}, special order {2}: at most {3} ({4})")
    @CsvSource(textBlock = """
            CA, 9000.00,  0,    900.00,  Cal. BPC 7159.5(a)(3): lesser of 1000 and a tenth
            CA, 18000.00, 0,    1000.00, the same
            MD, 10000.00, 0,    3333.33, Md. Bus. Reg. 8-617: one third
            PA, 5000.01,  0,    1666.67, 73 P.S. 517.9(10): one third above 5000
            PA, 9000.00,  1200, 4200.00, and the special order on top
            MA, 9000.00,  1200, 3000.00, M.G.L. c.142A s.2: the greater of the two
            MA, 9000.00,  4000, 4000.00, the greater of the two
            OH, 25000.00, 0,    2500.00, ORC 4722.03: a tenth from 25000
            OH, 25000.00, 2000, 4500.00, special-order items excepted
            """)
    void lawfulDepositPassesAndACentMoreIsAStop(
            String state, String price, String special, String limit, String source) {
        Dollars most = Dollars.of(limit);
        assertThat(check(state, price, most.plain(), special))
                .as(source)
                .noneMatch(finding -> finding.severity() == Severity.STOP);
        assertThat(check(state, price, most.plus(Dollars.of("0.01")).plain(), special))
                .as(source)
                .filteredOn(finding -> finding.severity() == Severity.STOP)
                .singleElement()
                .satisfies(stop -> {
                    assertThat(stop.id()).isEqualTo("deposit-over");
                    assertThat(stop.values()).containsEntry("limit", most.text());
                });
    }

    /** Under these prices the state's limit does not hold; that is no word on other law. */
    @ParameterizedTest
    @CsvSource({"PA, 5000.00", "OH, 24999.99"})
    void underTheThresholdNoStateLimitHolds(String state, String price) {
        assertThat(check(state, price, price, "0")).noneMatch(finding -> finding.severity() == Severity.STOP);
    }

    /** Fla. Stat. 489.126(2)(a): more than a tenth brings duties. */
    @ParameterizedTest
    @CsvSource({"2000.00, false", "2000.01, true"})
    void floridaBringsDutiesAboveATenth(String deposit, boolean duty) {
        assertThat(check("FL", "20000.00", deposit, "0").stream()
                        .map(Finding::id)
                        .toList()
                        .contains("deposit-duty"))
                .isEqualTo(duty);
    }

    /** N.Y. Lien Law 71-a. */
    @Test
    void newYorkHoldsTheMoneyInTrust() {
        assertThat(check("NY", "20000.00", "2000.00", "0"))
                .extracting(Finding::id)
                .contains("deposit-escrow");
    }

    @Test
    void stateThatWasNotGatheredIsSaidToBeSo() {
        assertThat(DepositCheck.of(
                        "WY",
                        new HouseLaw(STATES.federal(), Optional.empty()),
                        Dollars.of("9000"),
                        Dollars.of("9000"),
                        Dollars.ZERO))
                .extracting(Finding::id)
                .containsExactly("state-unread");
    }

    /** Only Maryland's deposit rule was read in full; every other one says that it was not. */
    @Test
    void whatWasNotReadInFullSaysSo() {
        STATES.byState().keySet().stream()
                .filter(state -> !state.equals(StateRules.FEDERAL))
                .forEach(state -> assertThat(check(state, "30000.00", "0", "0").stream()
                                .map(Finding::id)
                                .toList()
                                .contains("deposit-unverified"))
                        .as(state)
                        .isEqualTo(!state.equals("MD")));
    }
}
