// SPDX-License-Identifier: Apache-2.0
package spadework.office.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.reply.Reply;
import spadework.pricesheet.PriceColumn;

/** The price book out to a workbook and back, and prices from suppliers' lists. */
class BookSheetsTest {
    private static final LocalDate SEPTEMBER = LocalDate.of(2026, 9, 1);

    @TempDir
    Path folder;

    private Path book;
    private Path sheet;
    private String before;

    @BeforeEach
    void export() throws IOException {
        book = folder.resolve("price-book.json");
        sheet = folder.resolve("prices.xlsx");
        Files.copy(Path.of("sample-quotes/price-book.json"), book);
        Files.copy(Path.of("sample-quotes/company.json"), folder.resolve("company.json"));
        before = Files.readString(book);
        assertThat(sheets().export(sheet).done()).isTrue();
    }

    private BookSheets sheets() throws IOException {
        return new BookSheets(BookService.at(book));
    }

    private Reply take(boolean save) throws IOException {
        return sheets().take(
                        new BookSheets.PriceFile(sheet, Optional.empty()),
                        new BookSheets.Saving(SEPTEMBER, "September round", save));
    }

    private void edit(Consumer<Workbook> change) throws IOException {
        byte[] bytes = Files.readAllBytes(sheet);
        try (InputStream in = new java.io.ByteArrayInputStream(bytes);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            change.accept(workbook);
            try (OutputStream out = Files.newOutputStream(sheet)) {
                workbook.write(out);
            }
        }
    }

    private static Row row(Workbook workbook, String code) {
        for (Row row : workbook.getSheet("Prices")) {
            if (row.getCell(0).getStringCellValue().equals(code)) {
                return row;
            }
        }
        throw new IllegalArgumentException(code);
    }

    private static Cell cell(Workbook workbook, String code, PriceColumn column) {
        return row(workbook, code).getCell(column.ordinal());
    }

    private Map<String, String> cells() throws IOException {
        Map<String, String> cells = new TreeMap<>();
        edit(workbook -> workbook.forEach(one -> one.forEach(row -> row.forEach(
                cell -> cells.put(one.getSheetName() + "!" + cell.getAddress(), cell.getCellType() + " " + cell)))));
        return cells;
    }

    @Test
    void exportImportExportIsTheSameWorkbookByteForByte() throws IOException {
        byte[] first = Files.readAllBytes(sheet);
        Reply answered = take(true);
        assertThat(answered.err()).isEmpty();
        assertThat(answered.out()).containsExactly("Nothing differs from the book.");
        assertThat(Files.readString(book)).isEqualTo(before);
        sheets().export(sheet);
        assertThat(Files.readAllBytes(sheet)).isEqualTo(first);
    }

    @Test
    void changedCellsAreToldAndWrittenOnlyWhenAsked() throws IOException {
        edit(workbook -> {
            cell(workbook, "STONE-MACH", PriceColumn.COST).setCellValue(33.25);
            cell(workbook, "DIG-MACH", PriceColumn.PER_HOUR).setCellValue(7);
            cell(workbook, "AC-LIFT", PriceColumn.GOOD_UNTIL).setCellValue("2026-12-31");
        });
        Map<String, String> edited = cells();
        Reply answered = take(false);
        assertThat(answered.err()).isEmpty();
        assertThat(answered.out())
                .hasSize(4)
                .anyMatch(line -> line.matches("Prices!E\\d+ STONE-MACH material/cost: \\$31\\.50 → \\$33\\.25"))
                .anyMatch(line -> line.matches("Prices!I\\d+ DIG-MACH labor/perHour: .* cy → 7 cy"))
                .anyMatch(line -> line.matches("Prices!M\\d+ AC-LIFT goodUntil: — → 2026-12-31"));
        assertThat(Files.readString(book)).isEqualTo(before);
        assertThat(take(true).done()).isTrue();
        assertThat(Files.readString(book)).contains("\"$33.25\"", "\"perHour\": \"7 cy\"", "September round");
        sheets().export(sheet);
        Map<String, String> again = cells();
        again.keySet().removeIf(place -> place.matches("Prices!(N|O)\\d+|As exported!.*"));
        edited.keySet().removeIf(place -> place.matches("Prices!(N|O)\\d+|As exported!.*"));
        assertThat(again).isEqualTo(edited);
    }

    /** A workbook that was exported before a change of the book does not take that change back. */
    @Test
    void priceChangedInTheBookSinceTheExportIsNotTakenBack() throws IOException {
        BookService service = BookService.at(book);
        service.change("STONE-MACH", Map.of("material/cost", "$40.00"), SEPTEMBER, "meanwhile");
        edit(workbook -> cell(workbook, "DIG-MACH", PriceColumn.PER_HOUR).setCellValue(7));
        assertThat(take(true).err()).isEmpty();
        assertThat(Files.readString(book)).contains("\"$40.00\"", "\"perHour\": \"7 cy\"");
        edit(workbook -> cell(workbook, "STONE-MACH", PriceColumn.COST).setCellValue(33.25));
        assertThat(take(true).err())
                .hasSize(1)
                .allMatch(line -> line.contains(
                        "found 33.25, while the book was changed from 31.5 to 40.00 since the export; allowed: "));
        assertThat(Files.readString(book)).contains("\"$40.00\"").doesNotContain("\"$33.25\"");
    }

    @Test
    void priceOfNothingIsNoPrice() throws IOException {
        edit(workbook -> cell(workbook, "STONE-MACH", PriceColumn.COST).setCellValue(0));
        assertThat(take(true).err()).hasSize(1).allMatch(line -> line.contains("found 0; allowed: an amount above 0"));
    }

    /** One cell in the last row and column that a spreadsheet has. */
    @Test
    void sparseWorkbookIsToldAndFillsNoMemory() throws IOException {
        edit(workbook -> workbook.getSheet("Prices")
                .createRow(1_048_575)
                .createCell(16_383)
                .setCellValue(1));
        assertThatThrownBy(() -> take(true))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("something stands in row 1048576, column 16384 of sheet \"Prices\"");
    }

    @Test
    void workbookThatUnpacksToMoreThanAPriceListIsToldBeforeItIsRead() throws IOException {
        try (ZipOutputStream bomb = new ZipOutputStream(Files.newOutputStream(sheet))) {
            bomb.putNextEntry(new ZipEntry("xl/workbook.xml"));
            byte[] nothing = new byte[1 << 20];
            for (int i = 0; i < 80; i++) {
                bomb.write(nothing);
            }
            bomb.closeEntry();
        }
        assertThat(Files.size(sheet)).isLessThan(200_000);
        assertThatThrownBy(() -> take(true)).hasMessageContaining("it unpacks to more than a price list may");
    }

    @Test
    void workbookIsProtectedExceptWhatMayBeChanged() throws IOException {
        edit(workbook -> {
            XSSFSheet prices = (XSSFSheet) workbook.getSheet("Prices");
            assertThat(prices.getProtect()).isTrue();
            assertThat(cell(workbook, "STONE-MACH", PriceColumn.COST)
                            .getCellStyle()
                            .getLocked())
                    .isFalse();
            assertThat(cell(workbook, "STONE-MACH", PriceColumn.NAME)
                            .getCellStyle()
                            .getLocked())
                    .isTrue();
            assertThat(cell(workbook, "AC-LIFT", PriceColumn.COST)
                            .getCellStyle()
                            .getLocked())
                    .isTrue();
            assertThat(cell(workbook, "AC-LIFT", PriceColumn.SUBCONTRACT)
                            .getCellStyle()
                            .getLocked())
                    .isFalse();
            assertThat(prices.getDataValidations())
                    .extracting(validation -> PriceColumn.values()[
                            validation.getRegions().getCellRangeAddress(0).getFirstColumn()])
                    .contains(
                            PriceColumn.CODE,
                            PriceColumn.UNIT,
                            PriceColumn.CREW,
                            PriceColumn.MACHINE,
                            PriceColumn.COST);
        });
    }

    @Test
    void twentyPlantedFaultsAreAllToldAtTheirCellsAndNothingIsChanged() throws IOException {
        edit(workbook -> {
            cell(workbook, "STONE-MACH", PriceColumn.COST).setCellValue("cheap");
            cell(workbook, "STONE-MACH", PriceColumn.WASTE).setCellValue(140);
            cell(workbook, "STONE-MACH", PriceColumn.CREW).setCellValue("nobody");
            cell(workbook, "STONE-MACH", PriceColumn.MACHINE).setCellValue("crane");
            cell(workbook, "STONE-MACH", PriceColumn.PER_HOUR).setCellValue(0);
            cell(workbook, "STONE-MACH", PriceColumn.GOOD_UNTIL).setCellValue("Christmas");
            cell(workbook, "STONE-MACH", PriceColumn.NAME).setCellValue("Gravel");
            cell(workbook, "STONE-MACH", PriceColumn.UNIT).setCellValue("ton");
            cell(workbook, "STONE-MACH", PriceColumn.SECTION).setCellValue("wall");
            cell(workbook, "STONE-MACH", PriceColumn.SOLD).setCellValue("pail");
            cell(workbook, "STEP-RESET", PriceColumn.COST).setCellValue(-1);
            cell(workbook, "STEP-RESET", PriceColumn.WASTE).setCellFormula("1+1");
            cell(workbook, "STEP-RESET", PriceColumn.PER_HOUR).setCellErrorValue((byte) 7);
            cell(workbook, "STEP-RESET", PriceColumn.SOURCE_ON).setCellValue(true);
            cell(workbook, "AC-LIFT", PriceColumn.COST).setCellValue(5);
            cell(workbook, "AC-LIFT", PriceColumn.SUBCONTRACT).setCellValue(540.005);
            cell(workbook, "AC-LIFT", PriceColumn.PER_HOUR).setCellValue(2);
            row(workbook, "LOCATE-811").getCell(0).setCellValue("STONE-MACH");
            row(workbook, "DIG-MACH").getCell(0).setCellValue("DIG-MACHINE");
            row(workbook, "STONE-MACH").createCell(PriceColumn.values().length).setCellValue("a note");
            cell(workbook, "DIG-HAND", PriceColumn.SOURCE).setBlank();
            cell(workbook, "STEP-RESET", PriceColumn.DISPOSAL).setCellValue("none");
        });
        Reply answered = take(true);
        assertThat(answered.out()).isEmpty();
        assertThat(answered.err())
                .allMatch(
                        line -> line.matches(".*prices\\.xlsx:\\d+:\\d+ Prices!\\w+: found .*; allowed: .*; fix: .*"));
        List<String> found = answered.err().stream()
                .map(line -> line.replaceAll(".*Prices!([A-Z]+)\\d+: found (.*); allowed: .*", "$1 $2"))
                .toList();
        assertThat(found)
                .containsExactlyInAnyOrder(
                        "E \"cheap\"",
                        "G \"140%\"",
                        "H \"nobody\"",
                        "J \"crane\"",
                        "I \"0 cy\"",
                        "M \"Christmas\"",
                        "C \"Gravel\"",
                        "D \"ton\"",
                        "B \"wall\"",
                        "F \"pail\"",
                        "E -1",
                        "G the formula =1+1",
                        "I an error value",
                        "O true",
                        "E 5",
                        "K \"$540.005\"",
                        "I 2",
                        "A \"STONE-MACH\" a second time",
                        "A \"DIG-MACHINE\"",
                        "P \"a note\"",
                        "L \"none\"",
                        "A no row for LOCATE-811",
                        "A no row for DIG-MACH",
                        "N no \"text\"");
        assertThat(Files.readString(book)).isEqualTo(before);
    }

    @Test
    void otherFilesAreToldForWhatTheyAre() throws IOException {
        edit(workbook -> workbook.setSheetName(0, "Other"));
        assertThat(take(true).err()).hasSize(1).allMatch(line -> line.contains("no sheet \"Prices\""));
        Files.writeString(sheet, "no workbook");
        assertThatThrownBy(() -> take(true)).isInstanceOf(IOException.class).hasMessageContaining("no XLSX workbook");
    }

    @Test
    void supplierListIsReadThroughItsMap() throws IOException {
        Path list = folder.resolve("quarry.csv");
        Path map = folder.resolve("quarry.json");
        Files.writeString(list, """
                Quarry price list,,,
                No.,What,Net,Until
                Q57,"Washed stone, No. 57","$1,033.40",2026-12-31
                Q99,Boulders,12,2026-12-31
                """);
        Files.writeString(map, """
                {"headRow": 2, "code": "No.", "price": "Net", "goodUntil": "Until", "items": {"Q57": "STONE-MACH"}}
                """);
        BookSheets.Saving saving = new BookSheets.Saving(SEPTEMBER, "Quarry list, September", true);
        Reply answered = sheets().take(new BookSheets.PriceFile(list, Optional.of(map)), saving);
        assertThat(answered.err()).isEmpty();
        assertThat(answered.out())
                .contains("C3 STONE-MACH material/cost: $31.50 → $1033.40", "D3 STONE-MACH goodUntil: — → 2026-12-31");
        assertThat(Files.readString(book)).contains("\"$1033.40\"", "Quarry list, September");
        String after = Files.readString(book);

        Files.writeString(map, """
                {"headRow": 2, "code": "No.", "price": "Net", "items": {"Q57": "STON", "Q99": "AC-LIFT", "Q1": "STONE-MACH"}}
                """);
        Files.writeString(list, Files.readString(list).replace(",12,", ",twelve,"));
        assertThat(sheets().take(new BookSheets.PriceFile(list, Optional.of(map)), saving)
                        .err())
                .hasSize(3)
                .anyMatch(line -> line.contains("A3: found the item STON"))
                .anyMatch(line -> line.contains("C4: found \"twelve\""))
                .anyMatch(line -> line.contains("A2: found no row for \"Q1\""));
        assertThat(Files.readString(book)).isEqualTo(after);
    }

    /** A list as suppliers send them: a cover sheet, a title over the heads, numbers and dates as such, gaps. */
    private Path supplierWorkbook(Consumer<XSSFSheet> change) throws IOException {
        Path list = folder.resolve("yard.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            workbook.createSheet("Read me").createRow(0).createCell(0).setCellValue("Prices are net.");
            XSSFSheet prices = workbook.createSheet("List 9-26");
            prices.createRow(0).createCell(0).setCellValue("Yard prices");
            prices.addMergedRegion(new CellRangeAddress(0, 0, 0, 4));
            Row heads = prices.createRow(2);
            List.of("Article", "What", "Per", "Net $", "Good to")
                    .forEach(head -> heads.createCell(Math.max(0, heads.getLastCellNum()))
                            .setCellValue(head));
            CellStyle day = workbook.createCellStyle();
            day.setDataFormat(workbook.createDataFormat().getFormat("m/d/yyyy"));
            Row stone = prices.createRow(4);
            stone.createCell(0).setCellValue(5700);
            stone.createCell(1).setCellValue("Washed stone, No. 57");
            stone.createCell(2).setCellValue("ton");
            stone.createCell(3).setCellValue(Math.nextUp(34.8)); // 34.800000000000004, as a figured price is kept
            stone.createCell(4).setCellValue(LocalDate.of(2026, 12, 31));
            stone.getCell(4).setCellStyle(day);
            prices.createRow(5).createCell(0).setCellValue("not mapped");
            Row coat = prices.createRow(6);
            coat.createCell(0).setCellValue(" C-12 ");
            coat.createCell(3).setCellValue("$ 1,204.50");
            change.accept(prices);
            try (OutputStream out = Files.newOutputStream(list)) {
                workbook.write(out);
            }
        }
        return list;
    }

    private Path yardMap(String sheetName) throws IOException {
        return Files.writeString(folder.resolve("yard.json"), """
                {"sheet": "%s", "headRow": 3, "code": "Article", "price": "Net $", "goodUntil": "Good to",
                 "items": {"5700": "STONE-MACH", "C-12": "COAT-RUB"}}
                """.formatted(sheetName));
    }

    @Test
    void supplierWorkbookIsReadThroughItsMapLikeAList() throws IOException {
        BookSheets.Saving saving = new BookSheets.Saving(SEPTEMBER, "the yard's list of September", true);
        Reply answered = sheets().take(
                        new BookSheets.PriceFile(supplierWorkbook(prices -> {}), Optional.of(yardMap("List 9-26"))),
                        saving);
        assertThat(answered.err()).isEmpty();
        assertThat(answered.out())
                .containsExactly(
                        "List 9-26!D5 STONE-MACH material/cost: $31.50 → $34.80",
                        "List 9-26!E5 STONE-MACH goodUntil: — → 2026-12-31",
                        "List 9-26!D7 COAT-RUB material/cost: $190.00 → $1204.50",
                        "Written to " + book + ".");
        assertThat(sheets().take(
                                new BookSheets.PriceFile(
                                        folder.resolve("yard.xlsx"), Optional.of(yardMap("List 9-26"))),
                                saving)
                        .out())
                .containsExactly("Nothing differs from the book.");
    }

    @Test
    void everyFaultOfASupplierWorkbookIsToldAndNothingIsWritten() throws IOException {
        BookSheets.Saving saving = new BookSheets.Saving(SEPTEMBER, "the yard's list of September", true);
        Path faulty = supplierWorkbook(prices -> {
            prices.getRow(4).getCell(3).setCellFormula("3*11.6");
            prices.getRow(6).getCell(3).setCellErrorValue((byte) 7);
            Row again = prices.createRow(7);
            again.createCell(0).setCellValue(5700);
            again.createCell(3).setCellValue(1);
        });
        assertThat(sheets().take(new BookSheets.PriceFile(faulty, Optional.of(yardMap("List 9-26"))), saving)
                        .err())
                .hasSize(3)
                .anyMatch(line -> line.contains("D5: found the formula =3*11.6; allowed: an amount of dollars"))
                .anyMatch(line -> line.contains("D7: found an error value"))
                .anyMatch(line -> line.contains("A8: found \"5700\" a second time"));
        Path odd = supplierWorkbook(prices -> {
            prices.getRow(4).getCell(4).setCellFormula("TODAY()");
            prices.getRow(6).getCell(3).setCellValue(12.345);
        });
        assertThat(sheets().take(new BookSheets.PriceFile(odd, Optional.of(yardMap("List 9-26"))), saving)
                        .err())
                .hasSize(2)
                .anyMatch(line -> line.contains("E5: found the formula =TODAY(); allowed: a date, or nothing"))
                .anyMatch(line -> line.contains("D7: found \"$12.345\""));
        Path moved = supplierWorkbook(prices -> prices.getRow(2).getCell(3).setCellValue("Gross"));
        assertThat(sheets().take(new BookSheets.PriceFile(moved, Optional.of(yardMap("List 9-26"))), saving)
                        .err())
                .hasSize(1)
                .allMatch(line -> line.contains("no column \"Net $\""));
        assertThat(sheets().take(new BookSheets.PriceFile(moved, Optional.of(yardMap("List 8-26"))), saving)
                        .err())
                .hasSize(1)
                .allMatch(line -> line.contains("no sheet \"List 8-26\""));
        assertThat(Files.readString(book)).isEqualTo(before);
    }
}
