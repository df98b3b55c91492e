// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** The file around the cells: its bytes, its properties, how it prints, and what it must not hold. */
class WorkbookFileTest {

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"proposal", "scope", "certificate", "cost-sheet"})
    void theSameRecordGivesTheSameBytes(String document) throws IOException {
        byte[] first = print(document);
        TimeZone here = TimeZone.getDefault();
        byte[] second;
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            second = print(document);
        } finally {
            TimeZone.setDefault(here);
        }
        assertThat(second).isEqualTo(first);
        assertThat(entries(first))
                .isNotEmpty()
                .allMatch(entry -> entry.getTimeLocal().equals(LocalDateTime.of(1980, 2, 1, 0, 0)));
    }

    @Test
    void thePropertiesNameTheFirmAndTheDateOfIssueAndNobodyElse() throws IOException {
        String core = part(print("proposal"), "docProps/core.xml");
        assertThat(core)
                .contains("Proposal: Dry walls for the Alder Lane house")
                .contains("Fernhill Earthworks LLC")
                .contains("en-US")
                .contains("2026-03-03T00:00:00Z")
                .doesNotContain("lastModifiedBy")
                .doesNotContain("Apache");
        assertThat(core.split("2026-03-03T00:00:00Z", -1))
                .as("created and modified, no other time")
                .hasSize(3);
        assertThat(core.replace("2026-03-03T00:00:00Z", "")).doesNotContainPattern("\\d{4}-\\d\\d-\\d\\dT");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            proposal    | Summary, Price, Unit prices, Payments, Included, Terms, Warranty
            scope       | Summary, Before digging, Wall A, Wall B, Pipes and ground, Pipes and outlet, Quantities, Watch for
            certificate | Summary, Terms, Walls and pipes
            cost-sheet  | Summary, Lines, Sections, Build-up, Payments, To buy, Crew hours, Takeoff, Findings
            """)
    void theSheetsStandInOrderAndPrintOnePageWide(String document, String sheets) {
        XSSFWorkbook book = WorkbookDump.open(print(document));
        List<String> names = new ArrayList<>();
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
            XSSFSheet sheet = book.getSheetAt(i);
            names.add(sheet.getSheetName());
            assertThat(sheet.getFitToPage()).isTrue();
            assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
            assertThat(sheet.getPrintSetup().getFitHeight()).isEqualTo((short) (onePage(sheet) ? 1 : 0));
            assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.LETTER_PAPERSIZE);
            assertThat(book.getPrintArea(i)).contains("$A$1:");
            assertThat(sheet.getFooter().getLeft()).isEqualTo("Job 2026-014");
            assertThat(sheet.getFooter().getRight()).isEqualTo("Page &P of &N");
        }
        assertThat(String.join(", ", names)).isEqualTo(sheets);
    }

    @ParameterizedTest(name = "{0}, {1}: rows to {2} stay in sight, row {2} is repeated, landscape {3}")
    @CsvSource(textBlock = """
            proposal,   Price,    2, false
            proposal,   Payments, 3, false
            scope,      Wall A,   3, false
            scope,      Pipes and outlet, 2, true
            cost-sheet, Lines,    2, true
            cost-sheet, Sections, 3, false
            """)
    void theHeadStaysInSightAndIsRepeated(String document, String name, int head, boolean landscape) {
        XSSFSheet sheet = WorkbookDump.open(print(document)).getSheet(name);
        assertThat(sheet.getPaneInformation().getHorizontalSplitTopRow()).isEqualTo((short) head);
        assertThat(sheet.getRepeatingRows().getFirstRow()).isEqualTo(head - 1);
        assertThat(sheet.getRepeatingRows().getLastRow()).isEqualTo(head - 1);
        assertThat(sheet.getPrintSetup().getLandscape()).isEqualTo(landscape);
    }

    @Test
    void aContractorsOwnTemplateStandsForTheBundledOneAndUsesItsParts(@TempDir Path own) throws IOException {
        Files.createDirectories(own.resolve("proposal"));
        Files.writeString(own.resolve("proposal/workbook.ftlx"), """
                <#import "/workbook/parts.ftlx" as w>
                <@w.book proposal.head "Offer"><sheet name="Offer"><column key="a" width="30"/>
                <row style="title"><cell>${proposal.head.jobTitle}</cell></row></sheet></@w.book>
                """);
        byte[] file = WorkbookPress.print(
                Templates.with(own), "proposal", PaperworkFixtures.model(), PaperworkFixtures.ISSUED);
        assertThat(WorkbookDump.lines(WorkbookDump.open(file)))
                .containsExactly("Offer!A1 = STRING Dry walls for the Alder Lane house [General]");
        assertThat(WorkbookPress.print(
                        Templates.with(own), "scope", PaperworkFixtures.model(), PaperworkFixtures.ISSUED))
                .as("other documents stay bundled")
                .isEqualTo(print("scope"));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"proposal", "scope", "certificate", "cost-sheet"})
    void nothingIsHidden(String document) {
        XSSFWorkbook book = WorkbookDump.open(print(document));
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
            XSSFSheet sheet = book.getSheetAt(i);
            assertThat(book.getSheetVisibility(i)).isEqualTo(SheetVisibility.VISIBLE);
            assertThat(sheet.getCellComments()).isEmpty();
            sheet.forEach(row -> {
                assertThat(row.getZeroHeight()).isFalse();
                row.forEach(cell ->
                        assertThat(sheet.isColumnHidden(cell.getColumnIndex())).isFalse());
            });
        }
        assertThat(book.getAllNames()).noneMatch(name -> name.isHidden());
        assertThat(book.getExternalLinksTables()).isEmpty();
    }

    /** Every figure of the cost sheet that is no price, hunted through every byte of the homeowner's workbooks. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"proposal", "scope", "certificate"})
    void aHomeownersWorkbookHoldsNoCost(String document) throws IOException {
        StringBuilder all = new StringBuilder();
        byte[] file = print(document);
        for (ZipEntry entry : entries(file)) {
            all.append(part(file, entry.getName())).append('\n');
        }
        assertThat(internalFigures()).hasSizeGreaterThan(10).noneMatch(all.toString()::contains);
        assertThat(all.toString()).doesNotContainIgnoringCase("overhead").doesNotContainIgnoringCase("margin\">");
        assertThat(all.toString()).doesNotContain("Ask the neighbour");
    }

    private static boolean onePage(XSSFSheet sheet) {
        boolean first = sheet.getWorkbook().getSheetIndex(sheet) == 0;
        boolean certificate = sheet.getWorkbook().getSheet("Walls and pipes") != null;
        return first
                || sheet.getSheetName().equals("Warranty")
                || (certificate && sheet.getSheetName().equals("Terms"));
    }

    private static List<String> internalFigures() {
        List<String> figures = new ArrayList<>();
        PaperworkFixtures.lines().forEach(line -> {
            figures.add(line.cost().direct().plain());
            figures.add(line.cost().material().plain());
            figures.add(line.cost().labor().plain());
            figures.add(line.unitPrice().plain());
        });
        PaperworkFixtures.sheet()
                .buildUp()
                .steps()
                .forEach(step -> figures.add(step.value().toPlainString()));
        figures.removeIf(figure -> figure.length() < 5);
        return figures;
    }

    private static byte[] print(String document) {
        return WorkbookPress.print(Templates.bundled(), document, PaperworkFixtures.model(), PaperworkFixtures.ISSUED);
    }

    private static List<ZipEntry> entries(byte[] file) throws IOException {
        List<ZipEntry> entries = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.add(entry);
            }
        }
        return entries;
    }

    private static String part(byte[] file, String name) throws IOException {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (entry.getName().equals(name)) {
                    return new String(in.readAllBytes(), StandardCharsets.UTF_8);
                }
            }
        }
        throw new AssertionError("no part " + name);
    }
}
