// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work on the price book from the command line. */
class BookCommandTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path book;

    @BeforeEach
    void copy() throws IOException {
        book = folder.resolve("price-book.json");
        Files.copy(Path.of("sample-quotes/price-book.json"), book);
        Files.copy(Path.of("sample-quotes/company.json"), folder.resolve("company.json"));
    }

    private int book(String... arguments) {
        String[] all = new String[arguments.length + 3];
        all[0] = "book";
        all[1] = arguments[0];
        all[2] = "--book";
        all[3] = book.toString();
        System.arraycopy(arguments, 1, all, 4, arguments.length - 1);
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Spadework.run(new PrintWriter(out, true), new PrintWriter(err, true), all);
    }

    @Test
    void changeIsToldWrittenAndFoundAgainInTheHistory() throws IOException {
        assertThat(book(
                        "change",
                        "STONE-MACH",
                        "material/cost=$33.00",
                        "--on",
                        "2026-08-01",
                        "--reason",
                        "August list"))
                .isZero();
        assertThat(out.toString()).isEqualTo("""
                STONE-MACH material/cost: $31.50 → $33.00
                STONE-MACH source/text: Invented quarry's delivered price, loads of 10 tons and more → August list
                STONE-MACH source/on: 2026-06-12 → 2026-08-01
                """);
        assertThat(book("show", "STONE-MACH")).isZero();
        assertThat(out.toString()).contains("2026-08-01  August list", "  material/cost: $31.50 → $33.00");
        assertThat(book("show", "STONE-MACH", "--on", "2026-07-31")).isZero();
        assertThat(out.toString()).contains("$31.50").doesNotContain("$33.00");
        assertThat(Files.readString(book)).contains("\"dated\": \"2026-08-01\"");
    }

    @Test
    void itemOfTheBundledBookIsCopiedWhenItIsChanged() throws IOException {
        assertThat(book("change", "DIG-MACH", "labor/perHour=7 cy", "--on", "2026-08-01", "--reason", "own jobs"))
                .isZero();
        assertThat(Files.readString(book)).contains("\"code\": \"DIG-MACH\"", "\"perHour\": \"7 cy\"");
        assertThat(book("list", "--section", "wall")).isZero();
        assertThat(out.toString()).contains("7 cy/h");
    }

    /** A command that was noted when the format spelled it otherwise does what it did. */
    @Test
    void formerSpellingOfAPlaceIsThatPlace() throws IOException {
        Files.writeString(book, Files.readString(book).replace("\"labor\"", "\"labour\""));
        assertThat(book("change", "STONE-MACH", "labour/perHour=7 cy", "--on", "2026-08-01", "--reason", "own jobs"))
                .isZero();
        assertThat(out.toString()).startsWith("STONE-MACH labor/perHour: 5 cy → 7 cy\n");
        assertThat(Files.readString(book)).contains("\"labor\"").doesNotContain("labour");
        assertThat(book("add", "STONE-2", "--like", "STONE-MACH", "labour/perHour=6 cy", "--reason", "x"))
                .isZero();
        assertThat(Files.readString(book)).contains("\"perHour\": \"6 cy\"").doesNotContain("labour");
    }

    @Test
    void wrongValueIsToldAndNothingIsWritten() throws IOException {
        String before = Files.readString(book);
        assertThat(book("change", "STONE-MACH", "material/cost=33", "labor/crew=dig crw", "--reason", "x"))
                .isEqualTo(1);
        assertThat(err.toString())
                .contains("/items/0/material/cost: found \"33\"", "/items/0/labor/crew: found \"dig crw\"");
        assertThat(book("change", "STONE", "material/cost=$1", "--reason", "x")).isEqualTo(1);
        assertThat(err.toString()).contains("no item STONE");
        assertThat(Files.readString(book)).isEqualTo(before);
    }

    @Test
    void itemMayStartFromAnother() {
        assertThat(book(
                        "add",
                        "STONE-FAR",
                        "--like",
                        "STONE-MACH",
                        "material/cost=$40.00",
                        "standard=false",
                        "--on",
                        "2026-08-01",
                        "--reason",
                        "the far quarry"))
                .isZero();
        assertThat(book("find", "far", "quarry")).isZero();
        assertThat(out.toString()).startsWith("STONE-FAR").contains("$40.00").hasLineCount(1);
        assertThat(book("add", "STONE-FAR", "--like", "STONE-MACH", "--reason", "x"))
                .isEqualTo(1);
    }

    @Test
    void retiredItemIsListedOnlyWhenAskedFor() {
        assertThat(book("retire", "AC-LIFT", "--on", "2026-09-01", "--reason", "mechanic moved away"))
                .isZero();
        assertThat(book("list")).isZero();
        assertThat(out.toString()).doesNotContain("AC-LIFT");
        assertThat(book("list", "--retired")).isZero();
        assertThat(out.toString()).contains("AC-LIFT", "retired 2026-09-01");
    }

    @Test
    void everyCommandHasHelp() {
        for (String command : new String[] {"list", "find", "show", "add", "change", "retire"}) {
            assertThat(book(command, "--help")).as(command).isZero();
            assertThat(out.toString()).contains("spadework book " + command);
        }
    }
}
