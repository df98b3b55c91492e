// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.office.Bid;
import spadework.samples.Samples;

/**
 * The price of a foot of wall by kind of job, against bands that are made of published quartiles: INDOT unit bid
 * tabulations, January 2025 to May 2026.
 */
class WallFootBandTest {

    /** What every sample asks for a foot, before sales tax. The table is the promise: a price that moves moves it. */
    @ParameterizedTest(name = "{0}: ${2} a foot, {1}")
    @CsvSource(delimiter = '|', textBlock = """
            block-basement-to-swale    | 4 ft to 6 ft, gravity     | 370.18
            corners-by-assembly        | 4 ft to 6 ft, gravity     | 320.26
            maryland-buyer-of-65       | 4 ft to 6 ft, gravity     | 402.97
            stone-wall-engineer-first  | 4 ft to 6 ft, gravity     | 450.25
            crawl-space-between-houses | under 4 ft, gravity       | 232.42
            poured-basement-with-sump  | over 6 ft, sump           | 421.32
            added-wall-then-closed     | 4 ft to 6 ft, gravity     | 324.98
            """)
    void everySampleLiesInTheBandOfItsKind(String sample, String kind, BigDecimal asked) {
        Bid bid = Samples.bid(Path.of("sample-quotes", sample));
        WallFootBand band = WallFootBand.of(bid.dossier().job()).orElseThrow();
        BigDecimal foot =
                WallFootBand.perFoot(bid.dossier().job(), bid.quote().price()).orElseThrow();

        assertThat(band.kind()).isEqualTo(kind);
        assertThat(foot).isEqualByComparingTo(asked);
        assertThat(band.compare(foot))
                .as("$%s a foot, band %s to %s", foot, band.low(), band.high())
                .isZero();
    }

    /**
     * Summed by hand: 1.3 × 55 + 1.2 × 21 + 5.5 × 3 + 10 + 0.11 × 71.04 + 0.3 × 2 + 25.41 + 0.12 × 72 + 2.5 × 1.98 =
     * 170.61, and 1.3 × 141.25 + 1.2 × 118.13 + 5.5 × 5.9 + 51.13 + 0.11 × 160 + 0.3 × 9 + 72 + 0.12 × 140 + 2.5 × 16
     * = 558.06.
     */
    @Test
    void bandIsAmountsForAFootTimesTheQuartiles() {
        WallFootBand band = WallFootBand.all().get("4 ft to 6 ft, gravity");
        assertThat(band.low()).isEqualByComparingTo("171");
        assertThat(band.high()).isEqualByComparingTo("558");
    }

    @ParameterizedTest(name = "{0} a foot: {1}")
    @CsvSource({"170.99, -1", "171.00, 0", "558.00, 0", "558.01, 1"})
    void bothEndsBelongToTheBand(BigDecimal foot, int where) {
        assertThat(WallFootBand.all().get("4 ft to 6 ft, gravity").compare(foot))
                .isEqualTo(where);
    }

    @Test
    void everyDepthHasABandForBothWaysOfTheWater() {
        assertThat(WallFootBand.all()).hasSize(6);
        WallFootBand.all().values().forEach(band -> assertThat(band.low()).isLessThan(band.high()));
    }
}
