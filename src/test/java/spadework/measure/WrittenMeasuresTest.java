// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measures as people write them on a command line. */
class WrittenMeasuresTest {

    private static double read(String kind, String text) throws UnreadableMeasure {
        return switch (kind) {
            case "slope" -> Slope.parse(text).ratio();
            case "volume" -> Volume.parse(text).cubicYards();
            case "gallons" -> Volume.parse(text).gallons();
            case "weight" -> Weight.parse(text).tons();
            case "density" -> Density.parse(text).tonsPerCubicYard();
            case "percent" -> Percent.parse(text).fraction().doubleValue();
            case "area" -> LandArea.parse(text).squareFeet();
            default -> throw new IllegalArgumentException(kind);
        };
    }

    @ParameterizedTest(name = "{1} is {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # kind  | written        | read
            slope   | 0.5%           | 0.005
            slope   | 0.5%          | 0.005
            slope   | 1/8 in/ft      | 0.0104166667
            slope   | 0.25 in/ft     | 0.0208333333
            slope   | 0.01 ft/ft     | 0.01
            volume  | 1000 cy        | 1000
            volume  | 1,000 cy       | 1000
            volume  | 54 cf          | 2
            volume  | 1 m3           | 1.3079506193
            gallons | 5 gal          | 5
            gallons | 1 cf           | 7.4805194805
            weight  | 10 ton         | 10
            weight  | 2,741,283 lb   | 1370.6415
            density | 1.4 ton/cy     | 1.4
            density | 100 lb/cf      | 1.35
            density | 2,700 lb/cy    | 1.35
            percent | 30%            | 0.3
            percent | 6.25%         | 0.0625
            area    | 5 acre         | 217800
            area    | 0.2 mi2        | 5575680
            area    | 1600sf         | 1600
            area    | 94 sy          | 846
            area    | 1 m2           | 10.7639104167
            """)
    void spellingsThatAreRead(String kind, String text, double expected) throws UnreadableMeasure {
        assertThat(read(kind, text)).isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
    }

    @ParameterizedTest(name = "{1} is no {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # kind  | written      | what the message says is allowed
            slope   | 0.5          | %, in/ft, ft/ft
            slope   | -1%          | %, in/ft, ft/ft
            slope   | 1/0 in/ft    | %, in/ft, ft/ft
            volume  | 10           | cy, cf, gal, m3
            volume  | 10 tons      | cy, cf, gal, m3
            volume  | 1,00 cy      | cy, cf, gal, m3
            volume  | 1e9 cy       | cy, cf, gal, m3
            volume  | 9999999999 cy| cy, cf, gal, m3
            weight  | ten ton      | ton, tons, lb
            density | 1.4          | ton/cy, lb/cf, lb/cy
            density | 0 ton/cy     | above 0
            percent | 30           | (%)
            percent | 30% swell   | (%)
            area    | 5 ac         | acre
            area    | NaN sf       | acre
            """)
    void spellingsThatAreRefused(String kind, String text, String allowed) {
        assertThatThrownBy(() -> read(kind, text)).isInstanceOfSatisfying(UnreadableMeasure.class, wrong -> {
            assertThat(wrong.allowed()).contains(allowed);
            assertThat(wrong.fix()).startsWith("write it as \"");
        });
    }
}
