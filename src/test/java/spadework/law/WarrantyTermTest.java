// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WarrantyTermTest {

    /** The day before the same date; a start on 29 February keeps the 28th where the last year has no 29th. */
    @ParameterizedTest(name = "{0}, {1} years: to {2}")
    @CsvSource(textBlock = """
            2026-09-25, 10, 2036-09-24
            2026-01-01, 1,  2026-12-31
            2028-02-29, 15, 2043-02-28
            2028-02-29, 4,  2032-02-28
            2028-03-01, 1,  2029-02-28
            2027-03-01, 1,  2028-02-29
            """)
    void lastDay(LocalDate completed, int years, LocalDate last) {
        assertThat(WarrantyTerm.lastDay(completed, years)).isEqualTo(last);
    }
}
