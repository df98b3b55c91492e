package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.intake.StateRuleBook;

class CancellationTest {

    @ParameterizedTest(name = "{0}, signed {1}, age {2}: {3} ({4})")
    @CsvSource(textBlock = """
            MD, 2026-07-01, 40, 2026-07-08, five days by Maryland's own holidays (Com. Law 14-302.1)
            MD, 2026-07-01, 64, 2026-07-08, not yet 65
            MD, 2026-07-01, 65, 2026-07-10, seven days from 65
            MD, 2026-07-01, ,   2026-07-10, an unknown age counts as 65
            CA, 2026-07-01, 40, 2026-07-07, three days and the later reading of Saturday
            CA, 2026-07-01, 65, 2026-07-09, five days from 65
            CT, 2026-01-16, 40, 2026-01-22, the later of two readings on Saturday
            OH, 2026-07-02, 40, 2026-07-08, the federal floor read safely
            WY, 2026-07-01, 40, 2026-07-07, a state that was not gathered gets the federal floor
            """)
    void theLatestOfEveryRuleThatFits(String state, LocalDate signed, Integer age, LocalDate last, String why) {
        Cancellation cancellation =
                Cancellation.of(signed, StateRuleBook.bundled().find(state), Optional.ofNullable(age));
        assertThat(cancellation.lastDay()).as(why).isEqualTo(last);
        assertThat(cancellation.deadlines().get(0).rule()).isEqualTo("US-FTC");
    }
}
