// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNameTest {

    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(textBlock = """
            2026-014,            2026-014
            2026/014,            2026-014
            ../../etc/passwd,    etc-passwd
            'C:\\jobs\\1',       C-jobs-1
            .hidden,             hidden
            job 7 (rear),        job-7-rear
            Ägypten 12,          gypten-12
            """)
    void onlyPlainCharactersStay(String number, String name) {
        assertThat(FileName.safe(number)).isEqualTo(name);
    }

    @ParameterizedTest(name = "{0} is not usable as it is")
    @CsvSource({"...", "///", "CON", "nul.txt", "☐☐"})
    void neverEmptyHiddenOrReserved(String number) {
        assertThat(FileName.safe(number)).matches("job-[0-9a-f]+");
    }

    @Test
    void longNumbersAreCut() {
        assertThat(FileName.safe("x".repeat(500))).hasSize(60);
    }
}
