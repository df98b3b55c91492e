// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Which default items are priced unasked, and which are there for a job to name instead. */
class DefaultChoicesTest {

    /** Measures that only lend their figure to others, those of days, and stripping, which a job asks for by code. */
    private static final Set<Measure> NOT_DRIVING = EnumSet.of(
            Measure.DUG,
            Measure.SURPLUS,
            Measure.COAT_GALLONS,
            Measure.STONE_TONS,
            Measure.WALL_FOOT,
            Measure.DIG_MACHINE,
            Measure.STRIP,
            Measure.WORKING_DAY,
            Measure.EXCAVATOR_DAY,
            Measure.PUMP_DAY);

    @ParameterizedTest(name = "{0}")
    @EnumSource
    void everyMeasureThatDrivesAPriceHasItsStandardItem(Measure measure) {
        assertThat(Shipped.standardFor(measure).isEmpty()).isEqualTo(NOT_DRIVING.contains(measure));
    }

    /** Of alternatives one is standard. Several standard items on one measure are all done, as scrape and wash. */
    @Test
    void onlyWorkThatIsAllDoneSharesAMeasure() {
        List<String> shared = Arrays.stream(Measure.values())
                .filter(measure -> Shipped.standardFor(measure).size() > 1)
                .map(measure -> measure + " " + Shipped.standardFor(measure))
                .toList();

        assertThat(shared)
                .containsExactly(
                        "CLEAN [SCRAPE, WALL-DRY, WASH]",
                        "DAYLIGHT_OUTLET [OUT-GUARD, OUT-SPLASH]",
                        "SUMP [SUMP-BASIN, SUMP-ELEC, SUMP-PUMP]",
                        "CONCRETE [CONC-NEW, CONC-OUT]",
                        "JOB [FINAL-CLEAN, LOCATE-811, PERMIT, PHOTO-REC, SET-PROT]");
    }

    @ParameterizedTest(name = "{0} has alternatives")
    @CsvSource(delimiter = '|', textBlock = """
            COAT       | COAT-RUB   | COAT-ASP, COAT-BIT, COAT-CEM
            SHEET      | SHEET-ASP  | SHEET-HEAVY
            PARGE      | PARGE-PC   | PARGE-FIBER
            PROTECT    | PROT-DIMPLE | PROT-FOAM
            DRAIN_PIPE | PIPE-PERF4 | PIPE-COIL4, PIPE-PERF6
            STONE      | STONE-MACH | STONE-HAND
            MAIN_PIPE  | MAIN-4     | MAIN-6
            ROOF_PIPE  | ROOF-4     | ROOF-6
            BACKFILL   | BACK-LIFT  | BACK-GRAN, BACK-HAND
            """)
    void standardIsOneAndTheOthersAreNamedByTheJob(Measure measure, String standard, String others) {
        List<String> rest = Shipped.following(measure).stream()
                .filter(code -> !code.equals(standard))
                .toList();

        assertThat(Shipped.standardFor(measure)).containsExactly(standard);
        assertThat(String.join(", ", rest)).isEqualTo(others);
    }
}
