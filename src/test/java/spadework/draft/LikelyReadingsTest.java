// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is offered for words that cannot be read. */
class LikelyReadingsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    /walls/0/length            | 42 feat     | 42 ft, 42 in
                    /walls/0/length            | 42 ihn      | 42 in, 42 ft
                    /walls/0/finish/dryFilm    | 60 mills    | 60 mil
                    /walls/0/digging/handShare | 10 pct      | 10%
                    /site/rain/intensity       | 5.9 inches  | 5.9 in/h
                    /issued                    | 2026-8-1    | 2026-08-01, 2026-01-08
                    /issued                    | 8.31.26th   |
                    /site/soil/texture         | silty klay  | silty clay
                    /site/soil/texture         | nonsense    |
                    /walls/0/condition/cracks  | many        |
                    /title                     | 42 feat     |
                    """)
    void offersWhatWasLikelyMeant(String place, String typed, String offered) {
        List<String> wanted = offered == null
                ? List.of()
                : Arrays.stream(offered.split(",")).map(String::strip).toList();
        assertThat(LikelyReadings.of(FileSchema.job().at(place).orElseThrow(), typed))
                .isEqualTo(wanted);
    }
}
