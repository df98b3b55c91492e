// SPDX-License-Identifier: Apache-2.0
package spadework.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import spadework.intake.Intake;
import spadework.pricebook.PriceBook;
import spadework.pricesheet.Grid;
import spadework.pricesheet.PriceWorkbook;
import spadework.pricesheet.SheetChanges;
import spadework.pricesheet.Tables;

/**
 * Whatever a workbook holds, its cells are read or it is refused. What begins as an archive is read as it is; anything
 * else takes the place of the sheet with the prices in a workbook that is sound.
 */
class WorkbookFuzzTest {
    private static final PriceBook BOOK = new Intake().bundledBook();
    private static final byte[] SOUND = PriceWorkbook.of(BOOK, List.of("dig"), List.of("excavator"));
    private static final Grid EXPORTED = exported();

    @FuzzTest
    void workbookIsReadOrRefused(byte[] file) throws IOException {
        byte[] workbook = file.length > 1 && file[0] == 'P' && file[1] == 'K' ? file : withSheet(file);
        try {
            Optional<Grid> grid = Tables.workbook(workbook, PriceWorkbook.PRICES);
            grid.ifPresent(read -> Told.hold(
                    SheetChanges.of("prices.xlsx", read, EXPORTED, BOOK).faults()));
        } catch (IOException refused) {
            Told.hold(refused.getMessage());
        }
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
                    out.write("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>"
                            .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
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
