// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The outline tells what the schema allows at each place. */
class OutlineTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /number                         | LABEL     | true  |
            /site/house/eastWest            | LENGTH    | true  |
            /site/insideFloor               | LEVEL     | false |
            /site/soil/type                 | CHOICE    | false | not classed
            /site/yearBuilt                 | COUNT     | false |
            /site/address/state             | CHOICE    | true  |
            /walls                          | LIST      | false |
            /walls/3                        | GROUP     | false |
            /walls/3/depth                  | GROUP     | true  |
            /walls/3/depth/end              | LENGTH    | true  |
            /walls/3/footing/thickness      | LENGTH    | false | 8 in
            /walls/3/condition/displaced    | CHOICE    | true  |
            /asBuilt/flowTests/0/passed     | YES_OR_NO | true  |
            /walls/3/strip/0                | LABEL     | false |
            /water/mains/0/trench/depth     | LENGTH    | true  |
            /payments/0/share               | PERCENT   | true  |
            """)
    void placeHasItsKindNeedAndUsualValue(String pointer, FieldKind kind, boolean needed, String usual) {
        SchemaField spot = FileSchema.job().at(pointer).orElseThrow();
        assertThat(spot.kind()).isEqualTo(kind);
        assertThat(spot.needed()).isEqualTo(needed);
        assertThat(spot.usual().orElse(null)).isEqualTo(usual);
    }

    @Test
    void unknownKeyHasNoSpot() {
        assertThat(FileSchema.job().at("/walls/0/lenght")).isEmpty();
    }

    @Test
    void everyPlaceOfTheFormatIsListed() {
        assertThat(FileSchema.job().places())
                .contains(
                        "/number", "/walls/0/depth/start", "/water/roofLines/0/trench/width", "/warranty/parts/0/years")
                .hasSizeGreaterThan(150);
    }
}
