// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Severity;
import spadework.job.WaterJob;
import spadework.pricebook.Books;
import spadework.water.Network;
import spadework.water.OutletChoice;

/** Daylight or sump. */
class ChoiceRulesTest {

    /**
     * The drain's low end lies at 92.20 and the pipe's end stays 6 in above the place. 48 ft of 4 in pipe need 6 in at
     * 1/8 in a foot (IPC 704.1, G-03), so the place may lie at 91.20.
     */
    @ParameterizedTest(name = "{0} ft away at {1}: sump {2}: {3}")
    @CsvSource(textBlock = """
            48, 91.19, false, candidate-falls
            48, 91.20, false, candidate-falls
            48, 91.21, false, candidate-too-high
            49, 91.20, false, candidate-too-high
            48, 91.20, true,  candidate-spares-pump
            48, 91.21, true,  candidate-too-high
            48, 91.70, true,  candidate-too-high
            48, 91.71, true,  candidate-higher
            """)
    void candidate(double distance, double level, boolean sump, String expected) {
        WaterJob job = new WaterJob().candidate("P1", distance, level);
        if (sump) {
            job.sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0);
        }
        assertThat(Checked.only(job, expected).about()).isEqualTo("P1");
        assertThat(Checked.ids(job))
                .filteredOn(id -> id.startsWith("candidate"))
                .containsExactly(expected);
    }

    /** A fall below nothing is said in words, with the figure by which the place is too high. */
    @Test
    void aPlaceAboveTheDrainIsHigherAndHasNoNegativeFall() {
        var found = Checked.only(new WaterJob().candidate("P1", 48, 93.7), "candidate-higher");
        assertThat(found.values()).containsEntry("available", "2 ft");
    }

    @Test
    void eachPlaceIsLookedAtForItsFall() {
        var built = new WaterJob()
                .candidate("P1", 20, 92.0)
                .candidate("P2", 60, 90)
                .candidate("P3", 40, 90)
                .build();
        OutletChoice choice = OutletChoice.of(built, Books.standard(), Network.of(built, Books.standard()));
        assertThat(choice.considered())
                .extracting(OutletChoice.Considered::falls)
                .containsExactly(false, true, true);
    }

    @Test
    void placeThatIsTooHighDoesNotFall() {
        var built = new WaterJob().candidate("P1", 20, 92.0).build();
        assertThat(OutletChoice.of(built, Books.standard(), Network.of(built, Books.standard()))
                        .considered())
                .noneMatch(OutletChoice.Considered::falls);
    }

    @Test
    void sumpWithoutLookingForDaylightIsTold() {
        WaterJob job = new WaterJob().sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0);
        assertThat(Checked.ids(job)).contains("candidates-none");
        assertThat(Checked.ids(job.candidate("P1", 20, 92.0))).doesNotContain("candidates-none");
        assertThat(Checked.ids(new WaterJob())).doesNotContain("candidates-none");
    }

    @Test
    void unknownLevelOfADrainDecidesNothing() {
        var built = new WaterJob().drain(92.6, null).candidate("P1", 20, 90.0).build();
        Network network = Network.of(built, Books.standard());
        assertThat(OutletChoice.of(built, Books.standard(), network).considered())
                .isEmpty();
        assertThat(Checked.ids(new WaterJob().drain(92.6, null).candidate("P1", 20, 90.0)))
                .contains("levels-unmeasured");
    }

    /** 60 ft at 1/8 in are 7½ in; 92.20 less 6 in over a place at 90.70 leave 1 ft. */
    @Test
    void placeIsToldWithItsFigures() {
        assertThat(Checked.only(new WaterJob().candidate("P1", 60, 90.7), "candidate-falls"))
                .satisfies(f -> {
                    assertThat(f.severity()).isEqualTo(Severity.ADVISE);
                    assertThat(f.values())
                            .containsEntry("what", "ditch")
                            .containsEntry("level", "90.70 ft")
                            .containsEntry("distance", "60 ft")
                            .containsEntry("available", "1 ft")
                            .containsEntry("needed", "7½ in")
                            .containsEntry("permission", "no permission named");
                });
    }
}
