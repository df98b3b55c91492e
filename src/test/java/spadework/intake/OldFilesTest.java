// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.draft.Draft;
import spadework.draft.FileSchema;
import spadework.intake.law.StateRuleBook;
import spadework.intake.source.JsonPass;
import spadework.intake.source.SourceFile;

/** Files that were written when keys and words had another spelling say what they always said. */
class OldFilesTest {
    /** How the formats spelled it once, and how they do now. */
    private static final Map<String, String> FORMER = Map.of(
            "\"license\"", "\"licence\"",
            "\"labor\"", "\"labour\"",
            "\"neighbor footing\"", "\"neighbour footing\"",
            "\"fiber reinforced cement\"", "\"fibre reinforced cement\"",
            "\"license number\"", "\"licence number\"",
            "\"labor/perHour\"", "\"labour/perHour\"",
            "\"content-license-number\"", "\"content-licence-number\"");

    private static final String OWN_WORDS = "\"limits\": [{ \"kind\": \"neighbor footing\", ";

    @TempDir
    Path folder;

    @Test
    void jobCompanyAndBookAreTheSameRecordsInEitherSpelling() throws IOException {
        ReadJob now = (ReadJob) today().read();
        for (String file : List.of("job.json", "company.json", "price-book.json")) {
            String text = Files.readString(folder.resolve(file));
            assertThat(former(text)).isNotEqualTo(text);
            Files.writeString(folder.resolve(file), former(text));
        }
        ReadJob old = (ReadJob) new Intake(SampleFiles.BUNDLED).read(folder);
        assertThat(old.job()).isEqualTo(now.job());
        assertThat(old.company()).isEqualTo(now.company());
        assertThat(old.book()).isEqualTo(now.book());
        assertThat(now.job()
                        .agreement()
                        .signing()
                        .flatMap(signing -> signing.sale().salesperson())
                        .flatMap(person -> person.license()))
                .contains("S-1");
        assertThat(now.job().acceptedStops()).anyMatch(stop -> stop.finding().equals("content-license-number"));
        assertThat(now.book().items().values())
                .anyMatch(item -> item.history().stream()
                        .flatMap(change -> change.values().stream())
                        .anyMatch(value -> value.what().equals("labor/perHour")));
    }

    @Test
    void keptFilesAreReadInEitherSpelling() throws IOException {
        ReadJob now = (ReadJob) today().read();
        Map<String, byte[]> kept = new LinkedHashMap<>();
        for (String file : List.of("company.json", "price-book.json")) {
            kept.put(file, bytes(former(Files.readString(folder.resolve(file)))));
        }
        Path job = folder.resolve("job.json");
        ReadJob old = (ReadJob) new Intake(SampleFiles.BUNDLED)
                .readKept(
                        former(Files.readString(job)),
                        job,
                        kept,
                        bytes(former(SampleFiles.resource(SampleFiles.BUNDLED))));
        assertThat(old.book()).isEqualTo(now.book());
        assertThat(old.company()).isEqualTo(now.company());
        assertThat(old.job()).isEqualTo(now.job());
    }

    @Test
    void stateRulesAreTheSameInEitherSpelling() {
        String bundled = new String(StateRuleBook.bundledFile(), StandardCharsets.UTF_8);
        String old = bundled.replaceAll("(\"content\": \"[a-z ]*)license", "$1licence");
        assertThat(old)
                .contains("\"licence class\"", "\"licence expiry\"", "\"licence number\"", "\"salesperson licence\"");
        assertThat(StateRuleBook.of(bytes(old))).isEqualTo(StateRuleBook.bundled());
    }

    /** A book that stands alone and a job, each with the code that an item of the bundled book had once. */
    @Test
    void codesOfTheBundledBookAreReadInEitherSpelling() throws IOException {
        today();
        Intake intake = new Intake();
        String bundled = new String(Intake.bundledBookFile(), StandardCharsets.UTF_8);
        Path book = folder.resolve("price-book.json");
        assertThat(bundled).contains("\"PARGE-FIBER\"");
        assertThat(intake.readBook(bundled.replace("PARGE-FIBER", "PARGE-FIBRE"), book)
                        .book())
                .isEqualTo(intake.readBook(bundled, book).book());

        Draft job = Draft.read(Files.readString(Path.of("sample-quotes/corners-by-assembly/job.json")))
                .orElseThrow();
        Path file = Path.of("sample-quotes/corners-by-assembly/job.json");
        assertThat(intake.read(naming(job, "PARGE-FIBRE").text(), file))
                .isInstanceOf(ReadJob.class)
                .isEqualTo(intake.read(naming(job, "PARGE-FIBER").text(), file));
        assertThat(intake.read(naming(job, "PARGE-FIBRES").text(), file)).isInstanceOf(Refused.class);
    }

    private static Draft naming(Draft job, String code) {
        String row = "/items/" + job.rows("/items");
        return job.typed(row + "/code", code)
                .typed(row + "/quantity", "10 sf")
                .typed(row + "/section", "A")
                .typed(row + "/reason", "a patch");
    }

    /** One message a place, and none about an unknown key beside it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        company.json    | "license": {      | "licence": {}, "license": {       | /licence
        job.json        | "license": "S-1"  | "license": "S-1", "licence": "S"  | /signing/salesperson/licence
        price-book.json | "labor": {        | "labour": {}, "labor": {          | /items/0/labour
        """)
    void bothSpellingsAtOnceAreOneFault(String file, String from, String to, String pointer) {
        List<String> faults = SampleFiles.in(folder).with(file, from, to).faults();
        String former = pointer.substring(pointer.lastIndexOf('/') + 1);
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0))
                .startsWith(file + ":")
                .contains(pointer + ": ", "\"" + former + "\" beside \"", "take \"" + former + "\" out");
    }

    /** The format is described in the spelling of today alone. */
    @ParameterizedTest
    @EnumSource
    void schemaKnowsOnlyTheSpellingOfToday(FormatFile file) {
        assertThat(file.schemaText()).doesNotContainPattern("(?i)licence|labour|neighbour|fibre");
        JsonNode sample = file.sample();
        String old = former(sample.toString());
        assertThat(old).isNotEqualTo(sample.toString());
        assertThat(file.schemaErrors(FormatFile.parse(old))).isNotEmpty();
        SourceFile read = file.read(FormatFile.parse(old));
        assertThat(read.faults()).isEmpty();
        assertThat(read.knownKeys().values())
                .allSatisfy(keys -> assertThat(keys).doesNotContain("licence", "labour"));
    }

    @Test
    void jobIsEditedInTheSpellingOfToday() throws IOException {
        today();
        String text = Files.readString(folder.resolve("job.json"));
        Draft old = Draft.read(former(text)).orElseThrow();
        assertThat(old).isEqualTo(Draft.read(text).orElseThrow());
        assertThat(old.shown("/signing/salesperson/license")).isEqualTo("S-1");
        assertThat(old.shown("/site/limits/0/kind")).isEqualTo("neighbor footing");
    }

    @Test
    void bookIsEditedInTheSpellingOfToday() throws IOException {
        today();
        String text = Files.readString(folder.resolve("price-book.json"));
        Draft old = Draft.read(former(text), FileSchema.book()).orElseThrow();
        assertThat(old).isEqualTo(Draft.read(text, FileSchema.book()).orElseThrow());
    }

    @Test
    void wordsOfThePersonWhoWroteTheFileStayAsTheyAre() {
        String text = "{\"title\": \"licence\", \"notes\": [\"neighbour footing\"], \"licence\": \"of nothing\"}";
        Draft draft = Draft.read(text).orElseThrow();
        assertThat(draft.shown("/title")).isEqualTo("licence");
        assertThat(draft.shown("/notes/0")).isEqualTo("neighbour footing");
        assertThat(draft.shown("/licence")).isEqualTo("of nothing");
        assertThat(JsonPass.over("x", text).faults()).isEmpty();
    }

    /** The samples with every word that was spelled otherwise. */
    private SampleFiles today() {
        return SampleFiles.in(folder)
                .with("job.json", "\"acceptedStops\": [", """
                        "acceptedStops": [{"finding": "content-license-number", "by": "Cy", "why": "asked", "on": "2026-03-01"},\s""")
                .with("job.json", "\"limits\": [{", OWN_WORDS + "\"wall\": \"A\", \"distance\": \"9 ft\"}, {")
                .with("price-book.json", "\"liquid synthetic rubber\"", "\"fiber reinforced cement\"")
                .with("price-book.json", "\"what\": \"", "\"what\": \"labor/perHour\"}, {\"what\": \"");
    }

    private static String former(String text) {
        String old = text;
        for (Map.Entry<String, String> word : FORMER.entrySet()) {
            old = old.replace(word.getKey(), word.getValue());
        }
        return old;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
