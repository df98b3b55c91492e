package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.intake.StateRuleBook;
import spadework.money.Dollars;

/** A deposit on both sides of each state's rule. */
class DepositCheckTest {
    private static final StateRuleBook STATES = StateRuleBook.bundled();

    @ParameterizedTest(name = "{0}, price {1}, special order {2}, deposit {3}: {4}")
    @CsvSource(textBlock = """
            # Cal. BPC 7159.5(a)(3): the lesser of 1,000 and a tenth
            CA, 8000.00,  0,    800.00,   fits
            CA, 8000.00,  0,    800.01,   deposit-over
            CA, 18000.00, 0,    1000.00,  fits
            CA, 18000.00, 0,    1000.01,  deposit-over
            CA, 18000.00, 5000, 1000.01,  deposit-over
            # Md. Bus. Reg. 8-617: one third
            MD, 10000.00, 0,    3333.33,  fits
            MD, 10000.00, 0,    3333.34,  deposit-over
            MD, 10000.00, 5000, 3333.34,  deposit-over
            # 73 P.S. 517.9(10): over 5,000 one third, with the special order on top
            PA, 5000.00,  0,    5000.00,  fits
            PA, 5000.01,  0,    1666.67,  fits
            PA, 5000.01,  0,    1666.68,  deposit-over
            PA, 9000.00,  1200, 4200.00,  fits
            PA, 9000.00,  1200, 4200.01,  deposit-over
            # M.G.L. c. 142A s. 2: the greater of one third and the special order
            MA, 10000.00, 0,    3333.33,  fits
            MA, 10000.00, 0,    3333.34,  deposit-over
            MA, 9000.00,  4000, 4000.00,  fits
            MA, 9000.00,  4000, 4000.01,  deposit-over
            MA, 9000.00,  2000, 3000.01,  deposit-over
            # ORC 4722.03: a tenth from 25,000 on, special-order items excepted
            OH, 24999.99, 0,    24999.99, fits
            OH, 25000.00, 0,    2500.00,  fits
            OH, 25000.00, 0,    2500.01,  deposit-over
            OH, 25000.00, 2000, 4500.00,  fits
            OH, 25000.00, 2000, 4500.01,  deposit-over
            # Fla. Stat. 489.126(2)(a): a duty above a tenth
            FL, 20000.00, 0,    2000.00,  fits
            FL, 20000.00, 0,    2000.01,  deposit-duty
            # N.Y. Lien Law 71-a: held in trust, whatever the sum
            NY, 20000.00, 0,    1.00,     deposit-escrow
            NJ, 20000.00, 0,    20000.00, fits
            VA, 20000.00, 0,    20000.00, fits
            NC, 20000.00, 0,    20000.00, fits
            IL, 20000.00, 0,    20000.00, fits
            TX, 20000.00, 0,    20000.00, fits
            WA, 20000.00, 0,    20000.00, fits
            CT, 20000.00, 0,    20000.00, fits
            """)
    void bothSidesOfEveryRule(String state, String price, String special, String deposit, String said) {
        List<Finding> found = DepositCheck.of(
                state, STATES.find(state), Dollars.of(price), Dollars.of(deposit), Dollars.of(special));
        List<String> ids = found.stream()
                .map(Finding::id)
                .filter(id -> id.startsWith("deposit-") && !id.equals("deposit-unverified"))
                .toList();
        assertThat(ids).isEqualTo(said.equals("fits") ? List.of() : List.of(said));
        assertThat(found.stream().filter(finding -> finding.severity() == Severity.STOP).map(Finding::id))
                .isEqualTo(said.equals("deposit-over") ? List.of("deposit-over") : List.of());
    }

    @Test
    void stopNamesTheLawfulFigure() {
        Finding over = DepositCheck.of("MD", STATES.find("MD"), Dollars.of("10000"), Dollars.of("3333.34"), Dollars.ZERO)
                .stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .findFirst()
                .orElseThrow();
        assertThat(over.values()).containsEntry("limit", "$3,333.33").containsEntry("deposit", "$3,333.34");
        assertThat(over.citation()).contains("Md. Bus. Reg. 8-617");
    }

    @Test
    void stateThatWasNotGatheredIsNeverClear() {
        assertThat(DepositCheck.of("WY", Optional.empty(), Dollars.of("10000"), Dollars.ZERO, Dollars.ZERO))
                .extracting(Finding::id)
                .contains("state-unread");
    }

    /** What was not read in the law itself is told to be so, in every state but those whose rule was. */
    @Test
    void ruleThatWasNotReadIsToldToBeSo() {
        String verified = STATES.byState().values().stream()
                .filter(rules -> DepositCheck.of(
                                rules.state(), Optional.of(rules), Dollars.of("9000"), Dollars.ZERO, Dollars.ZERO)
                        .stream()
                        .noneMatch(finding -> finding.id().equals("deposit-unverified")))
                .map(StateRules::state)
                .sorted()
                .collect(Collectors.joining(" "));
        assertThat(verified).isEqualTo("MD US-FTC");
    }
}
