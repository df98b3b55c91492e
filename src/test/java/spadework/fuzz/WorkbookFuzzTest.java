// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import spadework.finding.Fault;
import spadework.intake.Intake;
import spadework.pricebook.PriceBook;
import spadework.pricesheet.Grid;
import spadework.pricesheet.PriceWorkbook;
import spadework.pricesheet.SheetChanges;
import spadework.pricesheet.Tables;

/**
 * Whatever a workbook holds, its cells are read or it is refused. What begins as an archive is read as it is; what
 * begins as XML takes the place of the sheet with the prices in a workbook that is sound; anything else is what stands
 * in its cells, with tabs between, where {@code =} begins a formula, {@code #} a number and {@code ?} yes or no.
 */
class WorkbookFuzzTest {
    private static final PriceBook BOOK = new Intake().bundledBook();
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final Path SEEDS =
            Path.of("src/test/resources/spadework/fuzz/WorkbookFuzzTestInputs/workbookIsReadOrRefused");
    private static final byte[] SOUND = PriceWorkbook.of(BOOK, List.of("dig"), List.of("excavator"));
    private static final Grid EXPORTED = exported();

    @FuzzTest
    void workbookIsReadOrRefused(byte[] file) throws IOException {
        byte[] workbook = workbook(file);
        try {
            Optional<Grid> grid = Tables.workbook(workbook, PriceWorkbook.PRICES);
            grid.ifPresent(read -> ReadableMessage.hold(
                    SheetChanges.of("prices.xlsx", read, EXPORTED, BOOK).faults()));
        } catch (IOException refused) {
            ReadableMessage.hold(refused.getMessage());
        }
    }

    /** A seed has to get as far as its cells: what is refused at the door tries nothing behind it. */
    @Test
    void seedIsReadToItsLastCell() throws IOException {
        Grid read = Tables.workbook(workbook(Files.readAllBytes(SEEDS.resolve("cells.txt"))), PriceWorkbook.PRICES)
                .orElseThrow();
        SheetChanges changes = SheetChanges.of("prices.xlsx", read, EXPORTED, BOOK);
        assertThat(changes.cells()).isNotEmpty();
        assertThat(changes.faults()).extracting(Fault::found).contains("the formula =1+1");
        assertThatThrownBy(() ->
                        Tables.workbook(workbook(Files.readAllBytes(SEEDS.resolve("sheet.xml"))), PriceWorkbook.PRICES))
                .hasMessageContaining("row 1048576, column 16384");
    }

    private static byte[] workbook(byte[] file) throws IOException {
        if (file.length > 1 && file[0] == 'P' && file[1] == 'K') {
            return file;
        }
        return withSheet(file.length > 0 && file[0] == '<' ? file : sheet(new String(file, StandardCharsets.UTF_8)));
    }

    private static byte[] sheet(String text) {
        StringBuilder xml = new StringBuilder("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
        for (String line : text.split("\n", -1)) {
            xml.append("<row>");
            for (String cell : line.split("\t", -1)) {
                xml.append(cell(cell));
            }
            xml.append("</row>");
        }
        return xml.append("</sheetData></worksheet>").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String cell(String text) {
        String rest = text.isEmpty() ? "" : escaped(text.substring(1));
        return switch (text.isEmpty() ? ' ' : text.charAt(0)) {
            case '=' -> "<c><f>" + rest + "</f></c>";
            case '#' -> "<c><v>" + rest + "</v></c>";
            case '?' -> "<c t=\"b\"><v>" + rest + "</v></c>";
            case '!' -> "<c t=\"e\"><v>#DIV/0!</v></c>";
            default -> "<c t=\"inlineStr\"><is><t xml:space=\"preserve\">" + escaped(text) + "</t></is></c>";
        };
    }

    /** Without what XML does not know. */
    private static String escaped(String text) {
        return text.codePoints()
                .filter(c -> c == '\t' || (c >= ' ' && c < 0xD800) || (c > 0xDFFF && c < 0xFFFE) || c > 0xFFFF)
                .mapToObj(c -> c == '<' ? "&lt;" : c == '&' ? "&amp;" : Character.toString(c))
                .collect(Collectors.joining());
    }

    private static byte[] withSheet(byte[] sheet) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(SOUND));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.setLevel(0);
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                if (entry.getName().equals("xl/worksheets/sheet1.xml")) {
                    out.write(sheet);
                } else if (!entry.getName().equals("xl/worksheets/sheet2.xml")) {
                    in.transferTo(out);
                } else {
                    out.write(sheet(""));
                }
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static Grid exported() {
        try {
            return Tables.workbook(SOUND, PriceWorkbook.EXPORTED).orElseThrow();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
