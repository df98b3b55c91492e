// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spadework.measure.Unit;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;

/**
 * The price book as a workbook. Only what may be changed is open; units, codes, sections, crews and machines are chosen
 * from lists. The same book gives the same bytes.
 */
public final class PriceWorkbook {
    /** The sheet with the prices. */
    public static final String PRICES = "Prices";
    /** The hidden sheet with the same cells as they were exported, which shows later what was changed where. */
    public static final String EXPORTED = "As exported";

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final Map<String, XSSFCellStyle> styles = new HashMap<>();

    private PriceWorkbook() {}

    /**
     * The file.
     *
     * @param crews names of the company's crews; so with machines
     */
    public static byte[] of(PriceBook prices, List<String> crews, List<String> machines) {
        return new PriceWorkbook().file(prices, crews, machines);
    }

    /** The items in the order of the sheet: by section, then by code. */
    public static List<LineItem> items(PriceBook prices) {
        return prices.items().values().stream()
                .sorted((a, b) -> a.section() == b.section()
                        ? a.code().compareTo(b.code())
                        : a.section().compareTo(b.section()))
                .toList();
    }

    private byte[] file(PriceBook prices, List<String> crews, List<String> machines) {
        List<LineItem> items = items(prices);
        XSSFSheet sheet = book.createSheet(PRICES);
        head(sheet);
        for (int i = 0; i < items.size(); i++) {
            row(sheet.createRow(i + 1), items.get(i));
        }
        sheet.createFreezePane(1, 1);
        exported(items);
        ChoiceLists lists = new ChoiceLists(book, sheet, items.size());
        lists.add(PriceColumn.CODE, items.stream().map(LineItem::code).toList());
        lists.add(
                PriceColumn.SECTION,
                items.stream().map(item -> item.section().label()).distinct().toList());
        lists.add(
                PriceColumn.UNIT,
                Arrays.stream(Unit.values())
                        .filter(Unit::isCounted)
                        .map(Unit::symbol)
                        .toList());
        lists.add(PriceColumn.CREW, crews);
        lists.add(PriceColumn.MACHINE, machines);
        lists.amounts();
        sheet.enableLocking();
        try {
            properties(prices);
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            book.write(file);
            return file.toByteArray();
        } catch (IOException | InvalidFormatException impossible) {
            throw new UncheckedIOException(new IOException(impossible));
        } finally {
            book.getPackage().revert();
        }
    }

    private void head(XSSFSheet sheet) {
        XSSFRow row = sheet.createRow(0);
        for (PriceColumn column : PriceColumn.values()) {
            XSSFCell cell = row.createCell(column.ordinal());
            cell.setCellValue(column.title());
            cell.setCellStyle(style("head", true, "@"));
            sheet.setColumnWidth(column.ordinal(), column.width() * 256);
        }
    }

    private void row(XSSFRow row, LineItem item) {
        for (PriceColumn column : PriceColumn.values()) {
            XSSFCell cell = row.createCell(column.ordinal());
            CellContent content = column.of(item);
            if (content instanceof CellContent.Words words) {
                cell.setCellValue(words.text());
            } else if (content instanceof CellContent.Figure number) {
                cell.setCellValue(number.value().doubleValue());
            }
            boolean number = column.isMoney() || column == PriceColumn.WASTE || column == PriceColumn.PER_HOUR;
            String format = column.isMoney() ? "#,##0.00" : number ? "General" : "@";
            cell.setCellStyle(style("cell", !column.isOpen(item), format));
        }
    }

    private void exported(List<LineItem> items) {
        XSSFSheet same = book.createSheet(EXPORTED);
        head(same);
        for (int i = 0; i < items.size(); i++) {
            row(same.createRow(i + 1), items.get(i));
        }
        same.enableLocking();
        book.setSheetVisibility(book.getSheetIndex(same), SheetVisibility.VERY_HIDDEN);
    }

    private XSSFCellStyle style(String kind, boolean locked, String format) {
        return styles.computeIfAbsent(kind + locked + format, key -> {
            XSSFCellStyle style = book.createCellStyle();
            style.setLocked(locked);
            style.setDataFormat(book.createDataFormat().getFormat(format));
            if (kind.equals("head")) {
                XSSFFont bold = book.createFont();
                bold.setBold(true);
                style.setFont(bold);
            } else if (locked) {
                style.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
                style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            }
            style.setVerticalAlignment(VerticalAlignment.TOP);
            return style;
        });
    }

    private void properties(PriceBook prices) throws InvalidFormatException {
        LocalDate dated = prices.dated();
        Optional<Date> date =
                Optional.of(Date.from(dated.atStartOfDay(ZoneOffset.UTC).toInstant()));
        book.getProperties().getCoreProperties().setTitle(prices.title());
        book.getProperties().getCoreProperties().setCreator("Spadework");
        book.getProperties().getCoreProperties().setCreated(date);
        book.getProperties().getCoreProperties().setModified(date);
    }
}
