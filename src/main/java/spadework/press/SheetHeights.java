package spadework.press;

import spadework.press.SheetPlan.Cell;
import spadework.press.SheetPlan.CellKind;
import spadework.press.SheetPlan.Row;

/**
 * How high a row must be for its longest cell. Spreadsheets do not measure merged cells, and measuring fonts here would
 * make the file depend on the machine, so letters are taken at the widths of a common sans face, a little generously.
 */
final class SheetHeights {
    /** The most a spreadsheet allows, in points. */
    private static final double HIGHEST = 409;

    /** Points that one character of column width gives: 7 pixels of 1/96 in. */
    private static final double CHARACTER = 7 * 0.75;

    /** Points of a cell that stay empty beside its text. */
    private static final double PADDING = 4;

    private static final double GENEROUS = 1.04;

    private SheetHeights() {}

    /** Height in points. */
    static double of(WorkbookPlan plan, SheetPlan sheet, Row row) {
        double height = line(style(plan, row.style()));
        for (Cell cell : row.cells()) {
            SheetStyle style = style(plan, cell.style());
            int lines = cell.kind() == CellKind.TEXT ? lines(cell.content(), style, room(sheet, cell)) : 1;
            height = Math.max(height, lines * line(style) + 2);
        }
        return Math.min(HIGHEST, Math.ceil(height));
    }

    private static SheetStyle style(WorkbookPlan plan, String name) {
        return plan.styles().get(name);
    }

    private static double line(SheetStyle style) {
        return style.size() * 1.28;
    }

    private static double room(SheetPlan sheet, Cell cell) {
        double room = -PADDING;
        for (int i = sheet.indexOf(cell.at()); i <= sheet.indexOf(cell.to()); i++) {
            room += sheet.columns().get(i).width() * CHARACTER;
        }
        return room;
    }

    /** Lines that the text takes when it is broken between words. */
    private static int lines(String text, SheetStyle style, double room) {
        int lines = 0;
        double em = style.size() * GENEROUS * (style.bold() ? 1.06 : 1);
        for (String paragraph : text.split("\n", -1)) {
            lines++;
            double used = 0;
            for (String word : paragraph.split("(?<=[ -])")) {
                double wide = em * word.codePoints().mapToDouble(SheetHeights::width).sum();
                if (used > 0 && used + wide > room) {
                    lines++;
                    used = 0;
                }
                lines += (int) (wide / room);
                used = used + wide - room * (int) (wide / room);
            }
        }
        return lines;
    }

    /** Width of a character in parts of the letter size. */
    private static double width(int c) {
        if (" .,:;'|!ijltfrI()[]/-".indexOf(c) >= 0) {
            return 0.31;
        }
        if ("mwMW@%".indexOf(c) >= 0) {
            return 0.84;
        }
        if ("csxykvz".indexOf(c) >= 0) {
            return 0.5;
        }
        return c > 0x2E7F ? 1.0 : Character.isUpperCase(c) ? 0.69 : 0.556;
    }
}
