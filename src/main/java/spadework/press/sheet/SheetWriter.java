// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import spadework.press.sheet.SheetPlan.Cell;
import spadework.press.sheet.SheetPlan.CellKind;
import spadework.press.sheet.SheetPlan.Row;

/** Lays out the cells of one sheet. Formulas and names are noted for later, since they may look ahead. */
final class SheetWriter {
    private final String template;
    private final WorkbookPlan plan;
    private final SheetLooks looks;
    private final SheetNames names;
    private final SheetFormulas formulas;

    SheetWriter(String template, WorkbookPlan plan, SheetLooks looks, SheetNames names, SheetFormulas formulas) {
        this.template = template;
        this.plan = plan;
        this.looks = looks;
        this.names = names;
        this.formulas = formulas;
    }

    /** The cells of a sheet. */
    GridSheet write(SheetPlan from, String name) {
        GridSheet sheet = new GridSheet(name, from);
        for (Row row : from.rows()) {
            row(from, row, sheet);
        }
        return sheet;
    }

    private void row(SheetPlan from, Row row, GridSheet to) {
        int here = to.count();
        int empty = looks.number(new SheetLooks.Look(style(row.style(), 0), "General", false, false, true));
        GridCell[] cells = new GridCell[from.columns().size()];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = GridCell.blank(to, here, i, empty);
        }
        for (Cell cell : row.cells()) {
            int first = from.indexOf(cell.at());
            int last = from.indexOf(cell.to());
            SheetStyle style = style(cell.style(), cell.line());
            try {
                int look = looks.number(look(style, cell, first == 0));
                for (int i = first; i <= last; i++) {
                    cells[i] = GridCell.blank(to, here, i, look);
                }
                cells[first] = filled(from, cell, cells[first]);
            } catch (IllegalArgumentException | DateTimeParseException e) {
                String problem =
                        "the cell holds " + cell.content() + ", which is not a " + cell.kind() + " it can show";
                throw WorkbookReader.fault(template, cell.line(), problem, e);
            }
            if (last > first) {
                to.join(here, first, last);
            }
            names.note(cell, to.name(), first, here);
        }
        to.add(cells, SheetRowHeights.of(plan, from, row));
    }

    private GridCell filled(SheetPlan from, Cell cell, GridCell at) {
        return switch (cell.kind()) {
            case TEXT -> at.with(CellType.STRING, cell.content());
            case DATE -> at.with(DateUtil.getExcelDate(LocalDate.parse(cell.content())));
            case FORMULA -> {
                GridCell formula = at.with(CellType.FORMULA, formulas.text(from, cell, at.row()));
                formulas.add(cell, formula);
                yield formula;
            }
            default -> at.with(SheetNumbers.value(cell).doubleValue());
        };
    }

    private static SheetLooks.Look look(SheetStyle style, Cell cell, boolean first) {
        boolean text = cell.gives() == CellKind.TEXT;
        boolean figure = !text && cell.gives() != CellKind.DATE;
        boolean quoted = text && SheetText.looksLikeFormula(cell.content());
        return new SheetLooks.Look(style, SheetNumbers.format(cell), figure, quoted, first);
    }

    private SheetStyle style(String name, int line) {
        SheetStyle style = plan.styles().get(name);
        if (style == null) {
            throw WorkbookReader.fault(template, line, "there is no style " + name, null);
        }
        return style;
    }
}
