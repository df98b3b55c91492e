// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Finding;
import spadework.office.Bid;
import spadework.paperwork.part.WarrantyPromises;
import spadework.paperwork.part.WarrantyRow;

/** A wall is promised what is put on it: a dampproofed one is not promised dry. */
class WarrantedWallsTest {
    private static final Path CRAWL = Path.of("sample-quotes/crawl-space-between-houses");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Wall A of the sample has 60 mil of liquid rubber, wall B 45: from 60 the code calls it waterproofing (F-19). */
    @ParameterizedTest(name = "A {0}, B {1}")
    @CsvSource({"60 mil, 45 mil, true, true", "59 mil, 45 mil, false, true", "60 mil, 60 mil, true, false"})
    void thePartsFollowTheFilms(String first, String second, boolean proof, boolean damp) throws IOException {
        ObjectNode job = crawl();
        ((ObjectNode) job.at("/walls/0/finish")).put("dryFilm", first);
        ((ObjectNode) job.at("/walls/1/finish")).put("dryFilm", second);

        Bid bid = bid(job);
        List<String> parts = WarrantyPromises.specimen(
                        bid.dossier(), bid.dossier().job())
                .parts()
                .stream()
                .map(WarrantyRow::part)
                .toList();

        assertThat(parts.contains("Waterproofed wall")).isEqualTo(proof);
        assertThat(parts.contains("Dampproofed wall")).isEqualTo(damp);
        assertThat(parts).contains("Footing drain and its pipe to the outlet", "Refilled ground");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "The wall stays dry.",
                "No water comes through the wall.",
                "It will not leak again.",
                "Por la pared no entra más agua.",
                "La pared queda seca."
            })
    void aTextThatPromisesMoreIsFound(String promise) throws IOException {
        ObjectNode job = crawl();
        job.putArray("terms").add("We work by day. " + promise);

        assertThat(dry(bid(job))).singleElement().satisfies(found -> {
            assertThat(found.about()).isEqualTo("B");
            assertThat(Samples.office().what(found)).contains("terms", promise.substring(0, promise.length() - 1));
        });
        ((ObjectNode) job.at("/walls/1/finish")).put("dryFilm", "60 mil");
        assertThat(dry(bid(job))).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "We do not promise that the wall stays dry.",
                "Washing and coating need four dry days.",
                "No prometemos que la pared quede seca."
            })
    void aTextThatPromisesNoneIsNot(String text) throws IOException {
        ObjectNode job = crawl();
        job.putArray("terms").add(text);

        assertThat(dry(bid(job))).isEmpty();
    }

    /** A company that ties its promise to no kind of wall is told so where a wall is only dampproofed. */
    @Test
    void aPartThatIsAboutEveryWallIsFound() throws IOException {
        ObjectNode job = crawl();
        ObjectNode warranty = (ObjectNode) JSON.readTree(Files.readString(CRAWL.resolveSibling("company.json")))
                .get("warranty");
        job.set("warranty", warranty);
        assertThat(dry(bid(job))).isEmpty();

        ((ObjectNode) warranty.at("/parts/0")).put("part", "Treated wall");
        assertThat(dry(bid(job))).hasSize(1);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "block-basement-to-swale", "corners-by-assembly", "crawl-space-between-houses", "poured-basement-with-sump",
        "stone-wall-engineer-first", "added-wall-then-closed", "back-wall-in-spanish", "maryland-buyer-of-65"
    })
    void noSamplePromisesMore(String sample) {
        assertThat(dry(Samples.bid(CRAWL.resolveSibling(sample)))).isEmpty();
    }

    private static ObjectNode crawl() throws IOException {
        return (ObjectNode) JSON.readTree(Files.readString(CRAWL.resolve("job.json")));
    }

    private static Bid bid(ObjectNode job) throws IOException {
        return (Bid) Samples.office().bid(JSON.writeValueAsString(job), CRAWL.resolve("job.json"));
    }

    private static List<Finding> dry(Bid bid) {
        return bid.findings().stream()
                .filter(finding -> finding.id().equals("dry-promised"))
                .toList();
    }
}
