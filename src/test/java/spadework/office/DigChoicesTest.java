// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.samples.Samples;

/** The ways to dig side by side say which one the job is priced in, and what speaks for another. */
class DigChoicesTest {

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            block-basement-to-swale   | slope        | priced in this job, $1,628.00 more than bench: note your reason, or price bench
            block-basement-to-swale   | bench        | may be done, the cheapest by soil, depth, and room; not priced so
            block-basement-to-swale   | shield       | may be done, $2,354.00 more than bench
            crawl-space-between-houses| slope        | priced in this job: the cheapest that soil, depth, and room allow
            crawl-space-between-houses| hand digging | may be done, $1,222.00 more than slope
            """)
    void everyWaySaysHowItStandsToTheJob(String sample, String way, String verdict) {
        List<String> row = DigChoices.rows(
                        Samples.bid(Path.of("sample-quotes", sample)).dossier())
                .stream()
                .filter(cells -> cells.get(0).equals(way))
                .findFirst()
                .orElseThrow();
        assertThat(row.get(row.size() - 1)).isEqualTo(verdict);
    }
}
