// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import spadework.press.sheet.SheetPlan.Cell;
import spadework.press.sheet.SheetPlan.CellKind;
import spadework.press.sheet.SheetPlan.Row;

/** Writes the cells of one sheet. Formulas and names are noted for later, since they may look ahead. */
public final class SheetWriter {
    private final String template;
    private final WorkbookPlan plan;
    private final SheetCellStyles looks;
    private final SheetNames names;
    private final SheetFormulas formulas;

    SheetWriter(String template, WorkbookPlan plan, SheetCellStyles looks, SheetNames names, SheetFormulas formulas) {
        this.template = template;
        this.plan = plan;
        this.looks = looks;
        this.names = names;
        this.formulas = formulas;
    }

    void write(SheetPlan from, XSSFSheet sheet) {
        for (int i = 0; i < from.columns().size(); i++) {
            sheet.setColumnWidth(i, (int) Math.round(from.columns().get(i).width() * 256));
        }
        for (int i = 0; i < from.rows().size(); i++) {
            row(from, from.rows().get(i), sheet.createRow(i));
        }
    }

    private void row(SheetPlan from, Row row, XSSFRow to) {
        SheetCellStyles.Look empty = new SheetCellStyles.Look(style(row.style(), 0), "General", false, false, true);
        for (int i = 0; i < from.columns().size(); i++) {
            to.createCell(i).setCellStyle(looks.get(empty));
        }
        for (Cell cell : row.cells()) {
            int first = from.indexOf(cell.at());
            int last = from.indexOf(cell.to());
            SheetStyle style = style(cell.style(), cell.line());
            try {
                fill(from, cell, to.getCell(first));
                SheetCellStyles.Look look = look(style, cell, first == 0);
                for (int i = first; i <= last; i++) {
                    to.getCell(i).setCellStyle(looks.get(look));
                }
            } catch (IllegalArgumentException | DateTimeParseException e) {
                String problem =
                        "the cell holds " + cell.content() + ", which is not a " + cell.kind() + " it can show";
                throw WorkbookReader.fault(template, cell.line(), problem, e);
            }
            if (last > first) {
                int here = to.getRowNum();
                to.getSheet().addMergedRegionUnsafe(new CellRangeAddress(here, here, first, last));
            }
            names.note(cell, to.getSheet().getSheetName(), first, to.getRowNum());
        }
        to.setHeightInPoints((float) SheetRowHeights.of(plan, from, row));
    }

    private void fill(SheetPlan from, Cell cell, XSSFCell to) {
        switch (cell.kind()) {
            case TEXT -> to.setCellValue(SheetText.stored(cell.content()));
            case DATE -> to.setCellValue(LocalDate.parse(cell.content()));
            case FORMULA -> formulas.add(from, cell, to);
            default -> to.setCellValue(SheetNumbers.value(cell).doubleValue());
        }
    }

    private static SheetCellStyles.Look look(SheetStyle style, Cell cell, boolean first) {
        boolean text = cell.gives() == CellKind.TEXT;
        boolean figure = !text && cell.gives() != CellKind.DATE;
        boolean quoted = text && SheetText.looksLikeFormula(cell.content());
        return new SheetCellStyles.Look(style, SheetNumbers.format(cell), figure, quoted, first);
    }

    private SheetStyle style(String name, int line) {
        SheetStyle style = plan.styles().get(name);
        if (style == null) {
            throw WorkbookReader.fault(template, line, "there is no style " + name, null);
        }
        return style;
    }
}
