// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One of a thing is told as one, several as several. */
class MessagesTest {
    @ParameterizedTest
    @CsvSource({
        "0 thing(s) are to fix, 0 things are to fix",
        "1 thing(s) are to fix, 1 thing is to fix",
        "2 thing(s) are to fix, 2 things are to fix",
        "12 day(s) left, 12 days left",
        "1 closed job(s): estimated, 1 closed job: estimated",
        "'1,001 working day(s)', '1,001 working days'",
    })
    void numberAndItsThingAgree(String written, String told) {
        assertThat(Messages.counted(written)).isEqualTo(told);
    }
}
