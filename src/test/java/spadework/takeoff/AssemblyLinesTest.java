// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.TakenAway;
import spadework.pricebook.Assembly;
import spadework.pricebook.Books;
import spadework.pricebook.Driver;
import spadework.pricebook.PriceBook;
import spadework.samples.Samples;
import spadework.working.Recomputed;
import spadework.working.Worked;

/**
 * An assembly gives each of its items so much for one unit of its driver. Sample 1: wall A 42 ft, wall B 26 ft, one
 * outside corner between them; the trench's center line lies 6 in + 24 in ÷ 2 = 1.5 ft from the wall.
 */
class AssemblyLinesTest {

    @ParameterizedTest(name = "{0} in section {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # driver       | section | stated | of the driver
            FOOT_OF_WALL   | A       |        | 42
            FOOT_OF_WALL   | setup   |        | 68
            FOOT_OF_TRENCH | A       |        | 43.5
            FOOT_OF_TRENCH | drain   |        | 71
            CORNER         | A       |        | 1
            CORNER         | B       |        | 0
            CORNER         | ground  |        | 1
            JOB            | setup   |        | 1
            FOOT_OF_WALL   | A       | 10     | 10
            """)
    void quantityIsTheDriverTimesTheShare(Driver driver, String section, BigDecimal stated, double count) {
        Takeoff takeoff = takeoff(driver, section, Optional.ofNullable(stated));
        List<TakeoffLine> lines = takeoff.lines().stream()
                .filter(line -> line.working().isPresent())
                .toList();
        assertThat(lines).extracting(TakeoffLine::code).containsExactly("STONE-MACH", "CLEANOUT");
        for (TakeoffLine line : lines) {
            double each = line.code().equals("STONE-MACH") ? 0.25 : 2;
            assertThat(line.working().orElseThrow().number()).isCloseTo(count * each, within(1e-9));
            assertThat(line.quantity().doubleValue()).isCloseTo(count * each, within(0.051));
            assertThat(line.section().label()).isEqualTo(section);
            assertThat(line.reason()).isEqualTo("Set: asked for");
            for (Worked worked : Recomputed.under(line.working().get())) {
                assertThat(Recomputed.evaluate(worked)).as(worked.line()).isCloseTo(worked.number(), within(1e-9));
            }
        }
    }

    private static Takeoff takeoff(Driver driver, String section, Optional<BigDecimal> stated) {
        Assembly set = new Assembly(
                "SET",
                "Set",
                driver,
                List.of(
                        new Assembly.Part("STONE-MACH", new BigDecimal("0.25")),
                        new Assembly.Part("CLEANOUT", new BigDecimal("2"))),
                List.of());
        PriceBook book = Books.standard();
        Map<String, Assembly> assemblies = new HashMap<>(Map.of("SET", set));
        PriceBook own = new PriceBook(
                book.title(),
                book.dated(),
                book.items(),
                assemblies,
                book.earth(),
                book.stoneTonsPerCubicYard(),
                book.truckCubicYards());
        Job sample = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"))
                .dossier()
                .job();
        Alteration more = new Alteration(
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new ExtraItem("SET", stated, section, "asked for")),
                Optional.empty(),
                TakenAway.NOTHING);
        return Measuring.of(Altered.of(sample, more), own);
    }
}
