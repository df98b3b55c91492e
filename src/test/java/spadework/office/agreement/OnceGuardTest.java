// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spadework.register.Entry;
import spadework.register.Event;

/** Who comes second is told who came first, and that nothing of his own was written. */
class OnceGuardTest {
    private static Entry entry(Event event, Map<String, String> facts) {
        LocalDate day = LocalDate.of(2026, 8, 20);
        return new Entry(7, day, event, Optional.empty(), 1, List.of(), facts, Optional.empty(), "", "");
    }

    @Test
    void secondAcceptanceIsToldOfTheFirst() {
        List<Entry> register = List.of(entry(Event.CONTRACT_SIGNED, Map.of("by", "Ida Wrenfield")));

        assertThatThrownBy(() -> OnceGuard.of(Event.CONTRACT_SIGNED).check(register))
                .hasMessage("The register has it already: " + Event.CONTRACT_SIGNED.words()
                        + ", line 7 of 2026-08-20, by Ida Wrenfield. Yours was not written down.");
    }

    @Test
    void whatNamesNobodyIsToldByItsDay() {
        List<Entry> register = List.of(entry(Event.FINAL_ACCOUNT_ISSUED, Map.of()));

        assertThatThrownBy(() -> OnceGuard.of(Event.FINAL_ACCOUNT_ISSUED).check(register))
                .hasMessageContaining("line 7 of 2026-08-20. Yours was not written down.");
    }

    @Test
    void firstIsLetThrough() {
        List<Entry> register = List.of(entry(Event.FINAL_ACCOUNT_ISSUED, Map.of()));

        assertThatCode(() -> OnceGuard.of(Event.CONTRACT_SIGNED).check(register))
                .doesNotThrowAnyException();
    }
}
