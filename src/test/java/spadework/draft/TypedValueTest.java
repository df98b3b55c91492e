// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type on a calculators, and what the file then says. */
class TypedValueTest {

    @ParameterizedTest(name = "{1} at {0} is {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # a bare number has the unit in which its field is written
            /walls/0/length                | 26           | 26 ft
            /walls/0/length                | 26.5         | 26.5 ft
            /walls/0/length                | 26 1/2       | 26 1/2 ft
            /walls/0/length                | 0            | 0 ft
            /walls/0/footing/thickness     | 8            | 8 in
            /walls/0/condition/bow         | 3/4          | 3/4 in
            /walls/0/condition/cracks      | 9            | 9 ft
            /site/insideFloor              | -6.25        | -6.25 ft
            /walls/0/finish/dryFilm        | 60           | 60 mil
            /walls/0/digging/handShare     | 10           | 10%
            /site/rain/intensity           | 3            | 3 in/h
            /restoration/seed              | 1,200        | 1,200 sf
            /water/outlets/0/pit/pumpFlow  | 40           | 40 gpm
            /priceChanges/0/materialCost   | 60           | $60.00
            /priceChanges/0/materialCost   | 1250.5       | $1,250.50
            # feet and inches as tapes are called out
            /walls/0/length                | 26'6         | 26 ft 6 in
            /walls/0/length                | 26' 6        | 26 ft 6 in
            /walls/0/length                | 5 6          | 5 ft 6 in
            /walls/0/length                | 38-6         | 38 ft 6 in
            /walls/0/length                | 5 11 1/2     | 5 ft 11 1/2 in
            /walls/0/length                | 46'6"        | 46 ft 6 in
            /walls/0/length                | 46′ 6½″      | 46 ft 6½ in
            /walls/0/length                | 46'-6 1/2"   | 46 ft 6 1/2 in
            /walls/0/length                | 46.5 feet    | 46.5 ft
            /walls/0/length                | 14.2m        | 14.2 m
            /walls/0/length                | 24"          | 24 in
            /site/insideFloor              | -2ft 3in     | -2 ft 3 in
            # other spellings of a unit
            /walls/0/finish/dryFilm        | 60mils       | 60 mil
            /restoration/seed              | 850 sq ft    | 850 sf
            /restoration/seed              | 850SF        | 850 sf
            /site/rain/intensity           | 3 in/hr      | 3 in/h
            /site/rain/intensity           | 3 in per hour| 3 in per hour
            /walls/0/digging/handShare     | 10 %         | 10%
            /asBuilt/stone                 | 12 Tons      | 12 ton
            # days
            /issued                        | 12/31/2027   | 2027-12-31
            /issued                        | 3/4/27       | 2027-03-04
            /issued                        | Dec 31, 2027 | 2027-12-31
            /issued                        | july 4 2026  | 2026-07-04
            # words
            /site/address/state            | oh           | OH
            /site/address/state            | Ohio         | OH
            /site/address/state            | new jersey   | NJ
            /walls/0/finish/system         | Coating      | coating
            /walls/0/condition/displaced   | No           | false
            /title                         | `  A '  `    | A '
            """)
    void isUnderstoodByItsPlace(String place, String typed, String inFull) {
        assertThat(TypedValue.inFull(FileSchema.job().at(place).orElseThrow(), typed))
                .isEqualTo(inFull);
    }

    @ParameterizedTest(name = "{1} at {0} stays")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # two likely readings: 3 ft or 3 in, 1.5 mm or 1.5 mil; or none
            /walls/0/digging/bottomWidth   | 3
            /walls/0/finish/dryFilm        | 1.5
            /asBuilt/stone                 | 12
            /walls/0/length                | 5 ft 13 in
            /walls/0/length                | 5 13
            /walls/0/length                | 4 feat
            /issued                        | 2/30/2027
            /issued                        | 12/31
            /priceChanges/0/materialCost   | 12.345
            /priceChanges/0/materialCost   | about 60
            /walls/0/length                | .
            /site/address/state            | Ohi
            /items/0/quantity              | as measured
            """)
    void whatIsNotClearStaysAsItWasTyped(String place, String typed) {
        assertThat(TypedValue.inFull(FileSchema.job().at(place).orElseThrow(), typed))
                .isEqualTo(typed);
    }
}
