// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads tables from files as they are. Nothing in them is worked out: a formula is reported as one. */
public final class Tables {
    private static final MathContext SHOWN = new MathContext(15);

    /** The largest file, in bytes. */
    public static final int LARGEST = 20 * 1024 * 1024;

    private static final int MOST_UNPACKED = 60 * 1024 * 1024;
    private static final int MOST_ENTRIES = 2_000;
    private static final int MOST_ROWS = 20_000;
    private static final int MOST_COLUMNS = 200;

    private Tables() {}

    /**
     * Reads the first sheet of a workbook.
     *
     * @return nothing where the workbook has no sheet
     * @throws IOException if the bytes are no workbook, or one that is larger than a price list
     */
    public static Optional<Grid> workbook(byte[] file) throws IOException {
        return workbook(file, book -> book.getNumberOfSheets() == 0 ? null : book.getSheetAt(0));
    }

    /**
     * Reads a sheet of a workbook.
     *
     * @return nothing where the workbook has no such sheet
     * @throws IOException if the bytes are no workbook, or one that is larger than a price list
     */
    public static Optional<Grid> workbook(byte[] file, String name) throws IOException {
        return workbook(file, book -> book.getSheet(name));
    }

    private static Optional<Grid> workbook(byte[] file, Function<XSSFWorkbook, Sheet> chosen) throws IOException {
        small(file);
        if (file.length == 0) {
            throw new IOException("it is empty");
        }
        unpacksWithin(file);
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(file))) {
            Sheet sheet = chosen.apply(book);
            return sheet == null ? Optional.empty() : Optional.of(grid(sheet));
        } catch (TooMuch large) {
            throw large;
        } catch (IOException | RuntimeException | StackOverflowError noWorkbook) {
            throw new IOException("it is no XLSX workbook", noWorkbook);
        } catch (OutOfMemoryError large) {
            throw new TooMuch("it needs more memory than a price list may");
        }
    }

    /** Larger than any price list. */
    private static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1L;

        private TooMuch(String what) {
            super(what + "; leave out what is no price, and save it again");
        }
    }

    private static void small(byte[] file) throws TooMuch {
        if (file.length > LARGEST) {
            throw new TooMuch("it is larger than " + (LARGEST >> 20) + " MB");
        }
    }

    /** Looks what an archive unpacks to before it is read: a small one may hold more than the memory. */
    private static void unpacksWithin(byte[] file) throws IOException {
        byte[] piece = new byte[1 << 16];
        long all = 0;
        int entries = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            while (zip.getNextEntry() != null) {
                entries++;
                for (int read = zip.read(piece); read >= 0; read = zip.read(piece)) {
                    all += read;
                    if (all > MOST_UNPACKED || entries > MOST_ENTRIES) {
                        throw new TooMuch("it unpacks to more than a price list may");
                    }
                }
            }
        } catch (ZipException | IllegalArgumentException | EOFException broken) {
            throw new IOException("it is no XLSX workbook", broken);
        }
    }

    /** Reads comma-separated values in UTF-8; every cell is words. */
    public static Grid csv(byte[] file) throws IOException {
        small(file);
        String text = text(file);
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<List<CellContent>> rows = new ArrayList<>();
        try (CSVParser parser =
                CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get().parse(new StringReader(plain))) {
            for (CSVRecord record : parser) {
                if (record.size() > MOST_COLUMNS || rows.size() >= MOST_ROWS) {
                    throw new TooMuch("it has more than " + MOST_ROWS + " rows or " + MOST_COLUMNS + " columns");
                }
                rows.add(record.stream().map(CellContent::words).toList());
            }
        } catch (TooMuch large) {
            throw large;
        } catch (IOException | RuntimeException malformed) {
            throw new IOException(
                    "row " + (rows.size() + 1) + " cannot be read as comma-separated values; look for a quotation mark"
                            + " that is not closed, or that is followed by something other than a comma",
                    malformed);
        }
        return new Grid("", rows);
    }

    private static String text(byte[] file) throws IOException {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString();
        } catch (CharacterCodingException other) {
            throw new IOException("its text is not UTF-8; save it as \"CSV UTF-8\"", other);
        }
    }

    /** Only what is there is looked at: one cell in the last of a million rows is no million rows. */
    private static Grid grid(Sheet sheet) throws TooMuch {
        List<List<CellContent>> rows = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                CellContent content = content(cell);
                if (content.equals(CellContent.empty())) {
                    continue;
                }
                int r = row.getRowNum();
                int c = cell.getColumnIndex();
                if (r >= MOST_ROWS || c >= MOST_COLUMNS) {
                    throw new TooMuch("something stands in row " + (r + 1) + ", column " + (c + 1) + " of sheet \""
                            + sheet.getSheetName() + "\", beyond " + MOST_ROWS + " rows and " + MOST_COLUMNS
                            + " columns");
                }
                while (rows.size() <= r) {
                    rows.add(new ArrayList<>());
                }
                List<CellContent> cells = rows.get(r);
                while (cells.size() < c) {
                    cells.add(CellContent.empty());
                }
                if (cells.size() == c) {
                    cells.add(content);
                } else {
                    cells.set(c, content);
                }
            }
        }
        return new Grid(sheet.getSheetName(), rows);
    }

    /** To the 15 digits that spreadsheets show: what was figured as 34.800000000000004 is 34.8 to who looks at it. */
    private static BigDecimal number(double value) {
        return BigDecimal.valueOf(value).round(SHOWN).stripTrailingZeros();
    }

    private static CellContent content(Cell cell) {
        if (cell == null) {
            return CellContent.empty();
        }
        return switch (cell.getCellType()) {
            case STRING -> CellContent.words(cell.getStringCellValue());
            case NUMERIC ->
                DateUtil.isCellDateFormatted(cell)
                        ? new CellContent.Words(
                                cell.getLocalDateTimeCellValue().toLocalDate().toString())
                        : new CellContent.Figure(number(cell.getNumericCellValue()));
            case FORMULA -> new CellContent.Odd("the formula =" + cell.getCellFormula());
            case BOOLEAN -> new CellContent.Odd(String.valueOf(cell.getBooleanCellValue()));
            case ERROR -> new CellContent.Odd("an error value");
            case BLANK, _NONE -> CellContent.empty();
        };
    }
}
