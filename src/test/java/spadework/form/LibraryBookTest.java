// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.awt.event.KeyEvent;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import javax.swing.JTabbedPane;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.form.library.LibraryTab;
import spadework.form.library.LibraryWindow;
import spadework.money.Dollars;
import spadework.office.book.BookService;
import spadework.office.reply.Reply;
import spadework.pricesheet.PriceColumn;

/** The price book in the window: what it lists, and what is written when somebody says so. */
@WindowTest
class LibraryBookTest {
    private static final int PAST = 1;

    @TempDir
    Path folder;

    private Path job;
    private Path book;
    private String before;

    @BeforeEach
    void copy() throws IOException {
        job = SampleCopies.of("block-basement-to-swale", folder);
        book = folder.resolve("price-book.json");
        before = Files.readString(book);
    }

    private BookService session() throws IOException {
        return BookService.at(book);
    }

    private static List<String> codes(Reply reply) {
        return reply.out().stream().map(line -> line.split(" ")[0]).toList();
    }

    private static List<String> codes(LibraryRobot hand) {
        return hand.cells("library.items").stream().map(row -> row.get(0)).toList();
    }

    @Test
    void itemsAreThoseOfTheCommandsAndAreFoundByWords() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.BOOK);
            assertThat(codes(hand))
                    .isEqualTo(codes(session().list(BookService.Wanted.CURRENT)))
                    .hasSizeGreaterThan(30);
            hand.type("library.find", "drain pipe");
            assertThat(codes(hand))
                    .isEqualTo(codes(session().find(List.of("drain", "pipe"))))
                    .isNotEmpty();
        }
    }

    @Test
    void keyOfTheMenuOpensTheLibraryAndControlWPutsItAway() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            screen.robot().click(screen.job().pages().get(0).entries().get(0).control());
            press(screen, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_B);
            screen.waitFor(() -> libraries() == 1);
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.BOOK);
            assertThat(libraries()).as("there is one library to a window").isEqualTo(1);
            hand.type("library.find", "stone");
            press(screen, KeyEvent.VK_CONTROL, KeyEvent.VK_W);
            screen.waitFor(() -> libraries() == 0);
        }
    }

    private static void press(OnScreen screen, int... keys) {
        for (int key : keys) {
            screen.robot().pressKey(key);
        }
        for (int key : keys) {
            screen.robot().releaseKey(key);
        }
        screen.arrive();
    }

    private static long libraries() {
        return Stream.of(Window.getWindows())
                .filter(window -> window instanceof LibraryWindow && window.isVisible())
                .count();
    }

    @Test
    void assemblyIsShownWithItsParts() throws IOException {
        Files.writeString(book, before.replaceFirst("\\n  ]\\s*}\\s*$", Matcher.quoteReplacement("""

              ],
              "assemblies": [{"code": "CORNER-KIT", "name": "Outside corner, sealed twice", "driver": "corner",
                "parts": [{"item": "STONE-MACH", "each": "0.5 cy"}, {"item": "AC-LIFT", "each": "1 ea"}]}]
            }
            """)));
        try (OnScreen screen = OnScreen.job(job)) {
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.BOOK);
            hand.type("library.find", "corner sealed");
            assertThat(codes(hand)).containsExactly("CORNER-KIT");
            assertThat(hand.text("library.parts"))
                    .contains("For each: corner", "0.5 of STONE-MACH   Drain stone No. 57, by machine");
            screen.picture("light-library-assembly");
        }
    }

    @Test
    void priceIsChangedByHandShownFirstAndKeptWithItsReason() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            JobWindow window = screen.job();
            Dollars total = screen.ask(() -> window.session().total()).orElseThrow();
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.BOOK);
            hand.type("library.find", "STONE-MACH");
            hand.value("Material: a package", "$43.00");
            hand.press("library.show");
            assertThat(hand.text("library.moves")).as("no reason was given").isEmpty();
            hand.type("library.reason", "the quarry's August list");
            hand.press("library.show");
            assertThat(hand.lines("library.moves")).contains("STONE-MACH material/cost: $31.50 → $43.00");
            assertThat(Files.readString(book))
                    .as("nothing is written by showing")
                    .isEqualTo(before);
            hand.press("library.write");
            assertThat(hand.text("library.moves")).startsWith("Written:");
            assertThat(session().show("STONE-MACH").out())
                    .contains("2026-08-10  the quarry's August list", "  material/cost: $31.50 → $43.00");
            JTabbedPane about = hand.find(JTabbedPane.class, "library.about");
            GuiActionRunner.execute(() -> about.setSelectedIndex(PAST));
            assertThat(hand.cells("library.past").toString())
                    .contains("2026-08-10, Material: a package, $31.50, $43.00, the quarry's August list");
            screen.waitFor(() -> screen.ask(window::isIdle));
            assertThat(screen.ask(() -> window.session().total()).orElseThrow())
                    .as("job on screen")
                    .isGreaterThan(total);
        }
    }

    @Test
    void typingOnAfterwardsTakesTheWritingBack() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.BOOK);
            hand.type("library.find", "STONE-MACH");
            hand.value("Material: a package", "$33.00");
            hand.type("library.reason", "August list");
            hand.press("library.show");
            assertThat(hand.canPress("library.write")).isTrue();
            hand.value("Material: a package", "$333.00");
            assertThat(hand.canPress("library.write")).isFalse();
            hand.value("Material: a package", "much");
            hand.press("library.show");
            assertThat(hand.text("library.moves")).contains("found \"much\"");
            assertThat(hand.canPress("library.write")).isFalse();
            assertThat(Files.readString(book)).isEqualTo(before);
        }
    }

    @Test
    void bundledItemIsCopiedIntoTheFirmsBookAndANewOneIsAddedAndGivenUp() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.BOOK);
            hand.type("library.find", "DIG-MACH");
            assertThat(before).doesNotContain("\"DIG-MACH\"");
            hand.value("Crew does in an hour", "7 cy");
            hand.type("library.reason", "own time on three jobs");
            hand.press("library.show");
            hand.press("library.write");
            assertThat(Files.readString(book)).contains("\"DIG-MACH\"", "\"7 cy\"", "own time on three jobs");
            hand.press("library.like");
            hand.type("library.code", "DIG-NIGHT");
            hand.value("Crew does in an hour", "5 cy");
            hand.value("Standard", "no");
            hand.type("library.reason", "work by lamps");
            hand.press("library.show");
            hand.press("library.write");
            assertThat(session().show("DIG-NIGHT").out())
                    .contains("2026-08-10  work by lamps")
                    .anyMatch(line -> line.matches("standard +false"))
                    .anyMatch(line -> line.matches("labor/perHour +5 cy"));
            hand.type("library.find", "DIG-NIGHT");
            hand.type("library.reason", "nobody asked for it");
            hand.press("library.retire");
            hand.press("library.write");
            assertThat(codes(hand)).doesNotContain("DIG-NIGHT");
            assertThat(codes(session().list(BookService.Wanted.CURRENT)))
                    .contains("DIG-MACH")
                    .doesNotContain("DIG-NIGHT");
            hand.press("library.gone");
            assertThat(codes(hand)).contains("DIG-NIGHT");
        }
    }

    private void edit(Path sheet, int many, boolean wrong) throws IOException {
        try (Workbook workbook = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(sheet)))) {
            int left = many;
            for (Row row : workbook.getSheet("Prices")) {
                if (left > 0
                        && row.getRowNum() > 0
                        && row.getCell(PriceColumn.PER_HOUR.ordinal())
                                        .getCellStyle()
                                        .getLocked()
                                == false) {
                    if (wrong) {
                        row.getCell(PriceColumn.PER_HOUR.ordinal()).setCellValue("fast");
                    } else {
                        row.getCell(PriceColumn.PER_HOUR.ordinal()).setCellValue(3);
                    }
                    left--;
                }
            }
            assertThat(left).isZero();
            try (OutputStream out = Files.newOutputStream(sheet)) {
                workbook.write(out);
            }
        }
    }

    @Test
    void workbookIsToldCellByCellAndWithFaultsNothingIsWritten() throws IOException {
        Path sheet = folder.resolve("prices.xlsx");
        try (OnScreen screen = OnScreen.job(job)) {
            screen.asked().target = Optional.of(sheet);
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.WORKBOOK);
            hand.press("workbook.export");
            screen.settle();
            byte[] good = Files.readAllBytes(sheet);
            edit(sheet, 20, true);
            hand.type("workbook.reason", "September round");
            hand.press("workbook.take");
            assertThat(hand.text("workbook.text")).isEqualTo("20 to fix. Nothing was written.");
            assertThat(hand.lines("workbook.lines")).hasSize(20).allMatch(line -> line.contains("\"fast\""));
            assertThat(hand.canPress("workbook.write")).isFalse();
            screen.picture("light-library-faults");
            assertThat(Files.readString(book)).isEqualTo(before);
            Files.write(sheet, good);
            edit(sheet, 2, false);
            hand.press("workbook.take");
            assertThat(hand.lines("workbook.lines")).hasSize(2).allMatch(line -> line.contains("labor/perHour: "));
            assertThat(Files.readString(book)).isEqualTo(before);
            hand.press("workbook.write");
            assertThat(hand.text("workbook.text")).isEqualTo("2 cells written into the book.");
            assertThat(Files.readString(book))
                    .contains("September round", LocalDate.of(2026, 8, 10).toString());
        }
    }
}
