// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.atIndex;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JTextArea;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.feedback.RateRule;
import spadework.form.kit.Theme;
import spadework.form.library.LibraryTab;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.SampleJobFolder;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Issuing;
import spadework.office.book.BookService;
import spadework.office.portfolio.FeedbackService;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;

/** What closed jobs took, in the window: the three errors, and rates that somebody takes one by one. */
@WindowTest
class LibraryFeedbackTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Path job;
    private Path book;

    /** Three closed jobs, alike but for the hours of digging and the invoices for stone. */
    @BeforeEach
    void close() throws IOException {
        job = SampleCopies.of("block-basement-to-swale", folder);
        book = folder.resolve("price-book.json");
        SampleJobFolder.makeSignable(job.getParent());
        Office office = Office.with(TemplateFolder.NONE);
        assertThat(new Issuing(office, SampleJobFolder.TODAY).issue(job.getParent()))
                .isInstanceOf(Outcome.Issued.class);
        assertThat(new Accepting(office, SampleJobFolder.TODAY)
                        .accept(job.getParent(), List.of(), SampleJobFolder.yes()))
                .isInstanceOf(Outcome.Issued.class);
        copy("second", "20 h", "$1,500.00");
        copy("third", "40 h", "$1,600.00");
        finish(job, "16 h", "$1,400.00");
    }

    private void copy(String name, String hours, String stone) throws IOException {
        Path to = folder.resolve(name);
        try (var all = Files.walk(job.getParent())) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(job.getParent().relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        finish(to.resolve("job.json"), hours, stone);
    }

    private static void finish(Path file, String hours, String stone) throws IOException {
        ObjectNode root = (ObjectNode) JSON.readTree(Files.readString(file));
        ObjectNode built =
                root.putObject("asBuilt").put("started", "2026-09-08").put("finished", "2026-09-25");
        built.set("actuals", JSON.readTree("""
            [{"code": "DIG-MACH", "quantity": "90 cy", "hours": "%s"},
             {"code": "STONE-MACH", "quantity": "20 cy", "hours": "5 h", "material": "%s"}]\
            """.formatted(hours, stone)));
        root.putObject("closed").put("completed", "2026-09-25");
        Files.writeString(file, JSON.writeValueAsString(root));
    }

    private BookService session() throws IOException {
        return BookService.at(book);
    }

    private List<String> described(Path tree) throws IOException {
        return new FeedbackService(tree, session(), RateRule.MEDIAN)
                .tell().out().stream().map(line -> line.replaceAll(" +", " ")).toList();
    }

    @Test
    void seasonAndTheJobOnScreenAreThoseOfTheCommand() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.FEEDBACK);
            assertThat(totals(hand)).isNotEmpty().allMatch(described(folder)::contains);
            assertThat(hand.cells("feedback.rates"))
                    .extracting(row -> row.get(0) + " " + row.get(1))
                    .containsExactly(
                            "DIG-MACH Crew does in an hour",
                            "STONE-MACH Crew does in an hour",
                            "STONE-MACH Material: a package");
            assertThat(hand.text("feedback.evidence")).contains("2026-014, finished 2026-09-25, silty clay, damp: ");
            screen.picture("light-library-lesson");
            GuiActionRunner.execute(() -> Theme.apply(true));
            screen.picture("dark-library-lesson");
            hand.press("feedback.one");
            assertThat(totals(hand)).hasSize(2).allMatch(described(job)::contains);
            assertThat(hand.cells("feedback.rates"))
                    .as("one job is too few for a middle")
                    .isEmpty();
        }
    }

    /** Code, jobs and amounts, as the command spells a row. */
    private static List<String> totals(LibraryRobot hand) {
        return hand.cells("feedback.totals").stream()
                .map(row -> String.join(
                        " ", row.get(0), row.get(2), row.get(3), row.get(4), row.get(5), row.get(6), row.get(7)))
                .toList();
    }

    @Test
    void oneRateIsTakenIntoTheBookAndTheOthersAreLeft() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.FEEDBACK);
            hand.click("feedback.rates", 0, "STONE-MACH", "Material: a package");
            String rate = hand.cells("feedback.rates").get(2).get(3);
            hand.type("feedback.on", "2026-12-01");
            hand.press("feedback.accept");
            Reply shown = session().show("STONE-MACH");
            assertThat(shown.out())
                    .contains("  material/cost: $31.50 → " + rate)
                    .anyMatch(line -> line.startsWith("2026-12-01  median of the last jobs: 2026-014 "))
                    .noneMatch(line -> line.startsWith("  labor/perHour"));
            assertThat(Files.readString(book)).doesNotContain("\"DIG-MACH\"");
            assertThat(hand.cells("feedback.rates"))
                    .extracting(row -> row.get(0) + " " + row.get(1))
                    .containsExactly("DIG-MACH Crew does in an hour", "STONE-MACH Crew does in an hour");
        }
    }

    @Test
    void feedbackIsSavedAsPdfAndWorkbook() throws IOException {
        try (OnScreen screen = OnScreen.job(job)) {
            Path out = folder.resolve("out");
            screen.asked().target = Optional.of(out);
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.FEEDBACK);
            hand.press("feedback.report");
            assertThat(hand.text("feedback.text")).startsWith("Written: ").contains("feedback.pdf", "feedback.xlsx");
            try (PDDocument pdf = Loader.loadPDF(out.resolve("feedback.pdf").toFile());
                    XSSFWorkbook workbook =
                            new XSSFWorkbook(out.resolve("feedback.xlsx").toString())) {
                assertThat(pdf.getNumberOfPages()).isPositive();
                assertThat(workbook.getSheet("Items").getRow(3).getCell(0).getStringCellValue())
                        .isEqualTo("DIG-MACH");
            }
        }
    }

    @Test
    void priceOtherwiseStandsBesideThePriceAsItIs() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("poured-basement-with-sump", folder))) {
            String total =
                    screen.ask(() -> screen.session().total()).orElseThrow().text();
            LibraryRobot hand = LibraryRobot.open(screen, LibraryTab.WHATIF);
            hand.type("whatif.with.1", "margin=20%");
            hand.type("whatif.with.2", "soil=C");
            hand.press("whatif.compare");
            List<String> row = hand.cells("whatif.prices").stream()
                    .filter(cells -> cells.get(0).equals("Total"))
                    .findFirst()
                    .orElseThrow();
            assertThat(row).hasSize(4).contains(total, atIndex(1));
            assertThat(row.get(2)).isNotEqualTo(total);
            hand.press("whatif.range");
            assertThat(hand.text("whatif.lines")).contains("Priced 1,000 times, seed 1", "80 of 100 jobs", total);
            screen.picture("light-library-otherwise-priced");
            hand.type("whatif.with.1", "margin=400%");
            hand.press("whatif.compare");
            screen.picture("light-library-otherwise-wrong");
            assertThat(screen.all(
                            JTextArea.class,
                            area -> area.isShowing() && area.getText().contains("from 0% to 95%")))
                    .hasSize(1);
        }
    }
}
