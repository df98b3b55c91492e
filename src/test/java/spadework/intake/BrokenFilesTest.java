// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.intake.source.FileText;

/** A file that is no JSON stops there, with the place; the other two are still read. */
class BrokenFilesTest {
    private static final String LOOK =
            "look here and just before for a quote, comma, bracket or brace that is missing or too many";

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"a": 1,}       | 1:9  | the character } | put a key in double quotes here, or take out the comma before
            {a: 1}          | 1:2  | the character a | put a key in double quotes here, or take out the comma before
            {'a': 1}        | 1:2  | the character ' | put a key in double quotes here, or take out the comma before
            {"a": 1 "b": 2} | 1:9  | the character " | put a comma before it, or close the list or object
            {"a" 1}         | 1:6  | the character 1 | put a colon between the key and its value
            {"a": "x\\qy"}  | 1:10 | the character q | write a backslash inside text as \\\\
            {"a": 1         | 1:8  | the end of the file | close the quotes, ] and } that are open
            {"a": "b        | 1:9  | the end of the file | close the quotes, ] and } that are open
            """)
    void malformedJsonHasPlaceAndMend(String text, String place, String found, String fix) throws IOException {
        assertThat(faultsOf(text))
                .containsExactly("job.json:" + place + ": found " + found + "; allowed: JSON; fix: " + fix);
    }

    @Test
    void anythingElseThatIsNoJsonIsToldByItsCharacter() throws IOException {
        assertThat(faultsOf("{\"a\": [1, ]}"))
                .containsExactly("job.json:1:11: found the character ]; allowed: JSON; fix: " + LOOK);
    }

    @Test
    void placeCountsLinesHoweverTheyEnd() throws IOException {
        assertThat(faultsOf("{\r\n  \"a\": 1\n,\r  ?}")).first().asString().startsWith("job.json:4:3: ");
    }

    @Test
    void rawLineBreakInsideTextSaysHowToWriteOne() throws IOException {
        assertThat(faultsOf("{\"a\": \"x\ny\"}"))
                .containsExactly("job.json:1:9: found the character U+000A; allowed: JSON; fix: "
                        + "inside text write a line break as \\n and a tab as \\t; take other control characters out");
    }

    @Test
    void emptyFile() throws IOException {
        assertThat(faultsOf(" \n "))
                .containsExactly("job.json: found an empty file; allowed: a JSON object; fix: fill the file in");
    }

    @Test
    void secondDocumentBehindTheFirst() throws IOException {
        assertThat(faultsOf("{}\n{}"))
                .containsExactly("job.json:2:1: found more text behind the end; allowed: one JSON object; "
                        + "fix: take out what follows the last }");
    }

    @Test
    void documentThatIsNoObject() throws IOException {
        assertThat(faultsOf("[1]"))
                .containsExactly("job.json:1:1: found a list; allowed: an object; fix: write it between { and }");
    }

    @Test
    void duplicateKeysAreToldAtTheSecondAndTheRestIsStillRead() {
        SampleFiles files = SampleFiles.in(folder)
                .with("job.json", "\"title\":", "\"number\": \"2\",\n  \"title\":")
                .with("job.json", "\"label\": \"A\",", "\"label\": \"A\", \"label\": \"Z\",")
                .with("job.json", "\"distance\": \"14 ft\"", "\"distance\": \"14\"");
        assertThat(files.faults())
                .containsExactly(
                        "job.json:4:3 /number: found the key \"number\" a second time; "
                                + "allowed: each key once in an object; fix: keep one of the two",
                        "job.json:23:58 /site/limits/0/distance: found \"14\"; "
                                + "allowed: a length with its unit (ft, in, yd, m, cm, mm); fix: write the"
                                + " unit, as \"14 ft\"",
                        "job.json:39:21 /walls/0/label: found the key \"label\" a second time; "
                                + "allowed: each key once in an object; fix: keep one of the two");
    }

    @Test
    void nestingDeeperThan64() throws IOException {
        assertThat(faultsOf("[".repeat(65) + "]".repeat(65)))
                .containsExactly("job.json:1:65: found more than 64 levels; allowed: at most 64 levels; "
                        + "fix: close brackets that are open");
        assertThat(faultsOf("[".repeat(100_000))).hasSize(1);
        assertThat(faultsOf("{\"a\": " + "[".repeat(63) + "]".repeat(63) + "}"))
                .noneMatch(fault -> fault.contains("levels"));
    }

    @Test
    void invalidUtf8HasThePlaceOfTheByte() throws IOException {
        byte[] latin = "{\n  \"title\": \"Caf\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(SampleFiles.in(folder).with("job.json", latin).faults())
                .containsExactly(
                        "job.json:2:16: found the byte E9; allowed: text in UTF-8; fix: save the file as UTF-8");
        byte[] cutOff = {'{', '"', (byte) 0xC3};
        assertThat(SampleFiles.in(folder).with("job.json", cutOff).faults())
                .containsExactly(
                        "job.json:1:3: found the byte C3; allowed: text in UTF-8; fix: save the file as UTF-8");
    }

    @Test
    void byteOrderMarkIsNoFault() throws IOException {
        byte[] marked = ("\uFEFF" + SampleFiles.resource("full/job.json")).getBytes(StandardCharsets.UTF_8);
        assertThat(SampleFiles.in(folder).with("job.json", marked).faults()).isEmpty();
    }

    @Test
    void fileOver10MegabytesIsNotRead() throws IOException {
        byte[] large = new byte[FileText.LARGEST + 1];
        Arrays.fill(large, (byte) ' ');
        assertThat(SampleFiles.in(folder).with("job.json", large).faults())
                .containsExactly("job.json: found more than 10 MB; allowed: at most 10 MB; "
                        + "fix: keep photos in files of their own beside it");
    }

    @Test
    void moreValuesThanMemoryShouldHoldAreNotRead() throws IOException {
        String many = "{\"notes\": [" + "0,".repeat(1_000_000) + "0]}";
        assertThat(faultsOf(many)).singleElement().asString().contains("found more than 100,000 values");
        String longKeys = "{\"" + "k".repeat(50) + "\": [" + "{\"" + "j".repeat(60) + "\":";
        assertThat(faultsOf(longKeys + ("[{\"" + "j".repeat(60) + "\":").repeat(20)))
                .singleElement()
                .asString()
                .contains("found keys longer than any that is known");
    }

    @Test
    void otherTwoFilesAreStillRead() {
        SampleFiles files = SampleFiles.in(folder)
                .with("job.json", "\"title\":", "\"title\"")
                .with("company.json", "\"validDays\": 30", "\"validDays\": 0")
                .with("price-book.json", "\"unit\": \"sf\"", "\"unit\": \"sqft\"");
        assertThat(files.faults())
                .satisfiesExactly(
                        company -> assertThat(company).startsWith("company.json:29:16 /validDays: found 0"),
                        job -> assertThat(job).startsWith("job.json:4:11: found the character \""),
                        book -> assertThat(book).startsWith("price-book.json:12:15 /items/0/unit: found \"sqft\""));
    }

    private List<String> faultsOf(String job) throws IOException {
        return SampleFiles.in(folder)
                .with("job.json", job.getBytes(StandardCharsets.UTF_8))
                .faults();
    }
}
