// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.office.reply.TemplateFolder;
import spadework.pricebook.Measure;
import spadework.takeoff.Takeoff;

/**
 * Twelve jobs that an estimator would try first, from one short wall to a large house. What they dig, fill, lay, coat
 * and haul is worked out a second time by {@link GroundByHand}; what is found on them lies beside each job, to be read.
 */
class EstimatesTest {
    private static final Path JOBS = Path.of("src/test/resources/spadework/office/estimates");
    private static final Office OFFICE = Office.with(TemplateFolder.NONE);

    /** Solids by volume of the coating that the samples' book lays. */
    private static final double SOLIDS = 0.65;

    @TempDir
    Path folder;

    /** Beside the samples' company and book. */
    private Bid bid(String job) throws IOException {
        for (String above : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(Path.of("sample-quotes", above), folder.resolve(above));
        }
        Path here = Files.createDirectory(folder.resolve(job));
        Files.copy(JOBS.resolve(job).resolve("job.json"), here.resolve("job.json"));
        return (Bid) OFFICE.bid(here);
    }

    private static JsonNode read(String job) throws IOException {
        return new ObjectMapper().readTree(JOBS.resolve(job).resolve("job.json").toFile());
    }

    private static double sum(Takeoff takeoff, Measure... measures) {
        return takeoff.quantities().stream()
                .filter(quantity -> List.of(measures).contains(quantity.measure()))
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    /**
     * Slopes: 1 in Type B and 1½ in Type C (29 CFR 1926 Subpart P App. B Table B-1); 0 where a shield stands or the
     * bank
     * is upright. Swell and shrink: clay 40 and 10 %, sand 12 and 5 % (E-05; FM 5-434 Table 1-1, from memory).
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            estate,             1,   1, 0.40, 0.10
            tiny,               1,   1, 0.40, 0.10
            crawl-space,        1,   1, 0.40, 0.10
            all-round,          1,   1, 0.40, 0.10
            main-3-ft,          1,   1, 0.40, 0.10
            main-5-ft,          1,   1, 0.40, 0.10
            main-8-ft,          1,   1, 0.40, 0.10
            outside-sump,       1,   1, 0.40, 0.10
            seeping-sand,     1.5, 1.5, 0.12, 0.05
            hand-only,          0,   1, 0.40, 0.10
            between-two-houses, 0,   1, 0.40, 0.10
            metric,             1,   1, 0.40, 0.10
            """)
    void quantitiesAreThoseOfASecondCalculation(String job, double slope, double main, double swell, double shrink)
            throws IOException {
        Takeoff takeoff = bid(job).dossier().takeoff();
        GroundByHand hand = new GroundByHand(read(job), slope, main);
        is("soil at the walls", sum(takeoff, Measure.DUG), hand.soil());
        is("other trenches", sum(takeoff, Measure.PIPE_TRENCH), hand.trenches());
        is("stone", sum(takeoff, Measure.STONE), hand.stone());
        is("backfill", sum(takeoff, Measure.BACKFILL), hand.backfill());
        is("drain pipe", sum(takeoff, Measure.DRAIN_PIPE), hand.drainPipe());
        is("coating", sum(takeoff, Measure.COAT_GALLONS), hand.gallons(SOLIDS));
        double surplus = hand.surplus(shrink);
        assertThat(sum(takeoff, Measure.SURPLUS)).as("surplus").isCloseTo(surplus, within(0.05));
        double loose = Math.max(0, surplus) * (1 + swell);
        assertThat(sum(takeoff, Measure.HAUL)).as("haul").isCloseTo(loose, within(0.07));
        assertThat(sum(takeoff, Measure.IMPORT)).as("import").isCloseTo(Math.max(0, -surplus), within(0.05));
        assertThat(sum(takeoff, Measure.HAUL_LOAD)).as("loads of 10 cy").isEqualTo(Math.ceil(loose / 10));
    }

    private static void is(String what, double found, double expected) {
        assertThat(found).as(what).isCloseTo(expected, within(1e-6 + 0.001 * Math.abs(expected)));
    }

    /** 136.801 cy, integrated by an outside program: 30 × 20 ft, dt 5 ft, tf 8 in, p 6 in, B 24 in, s 1. */
    @Test
    void allRoundIsTheKnownValue() throws IOException {
        assertThat(new GroundByHand(read("all-round"), 1, 1).soil()).isCloseTo(136.801, within(0.01));
    }

    @ParameterizedTest(name = "{0}")
    @DisplayName("what is found lies beside the job")
    @CsvSource({
        "estate", "tiny", "crawl-space", "all-round", "main-3-ft", "main-5-ft",
        "main-8-ft", "outside-sump", "seeping-sand", "hand-only", "between-two-houses", "metric"
    })
    void findingsAreTheExpectedOnes(String job) throws IOException {
        String found = bid(job).findings().stream()
                .map(finding -> finding.severity() + " " + finding.id()
                        + (finding.about().isEmpty() ? "" : ": " + finding.about()))
                .collect(Collectors.joining("\n", "", "\n"));
        Path expected = JOBS.resolve(job).resolve("findings.txt");
        if (Boolean.getBoolean("spadework.refresh")) {
            Files.writeString(expected, found);
        }
        assertThat(found).isEqualTo(Files.readString(expected));
    }
}
