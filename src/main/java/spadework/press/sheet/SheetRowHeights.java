// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.regex.Pattern;
import spadework.press.sheet.SheetPlan.Cell;
import spadework.press.sheet.SheetPlan.CellKind;
import spadework.press.sheet.SheetPlan.Row;
import spadework.press.sheet.SheetStyle.TextAlign;

/**
 * How high a row must be for its longest cell. Spreadsheets do not measure merged cells, and measuring fonts here would
 * make the file depend on the machine, so letters are taken at the widths of a plain sans face, a little generously.
 */
public final class SheetRowHeights {
    /** The most a spreadsheet allows, in points. */
    private static final double HIGHEST = 409;

    /** Points that one character of column width gives: 7 pixels of 1/96 in. */
    private static final double CHARACTER = 7 * 0.75;

    /** Points of a cell that stay empty beside its text. */
    private static final double PADDING = 4;

    /** Points by which words in any column but the first stand in. */
    private static final double STEP = 7;

    /** Points that keep words off the rules over and under them. */
    private static final double ABOVE_AND_BELOW = 6;

    private static final double GENEROUS = 1.03;

    /** After a space or a hyphen, where a line may end. */
    private static final Pattern BREAK = Pattern.compile("(?<=[ -])");

    /** From the space to the tilde in thousandths of the letter size: the published metrics of Helvetica. */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556,
        556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778,
        722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278,
        278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
    };

    private SheetRowHeights() {}

    /** Height in points. */
    static double of(WorkbookPlan plan, SheetPlan sheet, Row row) {
        double height = line(style(plan, row.style()));
        for (Cell cell : row.cells()) {
            SheetStyle style = style(plan, cell.style());
            int lines = cell.kind() == CellKind.TEXT ? lines(cell.content(), style, room(sheet, cell, style)) : 1;
            height = Math.max(height, lines * line(style) + ABOVE_AND_BELOW);
        }
        return Math.min(HIGHEST, Math.ceil(height));
    }

    private static SheetStyle style(WorkbookPlan plan, String name) {
        return plan.styles().get(name);
    }

    private static double line(SheetStyle style) {
        return style.size() * 1.28;
    }

    private static double room(SheetPlan sheet, Cell cell, SheetStyle style) {
        boolean stepsIn = sheet.indexOf(cell.at()) > 0 && style.align().orElse(TextAlign.LEFT) == TextAlign.LEFT;
        double room = stepsIn ? -PADDING - STEP : -PADDING;
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
            for (String word : BREAK.split(paragraph)) {
                double wide = em * width(word.stripTrailing());
                if (used > 0 && used + wide > room) {
                    lines++;
                    used = 0;
                }
                int more = (int) (wide / room);
                lines += more;
                used += wide - room * more + (word.endsWith(" ") ? em * width(" ") : 0);
            }
        }
        return lines;
    }

    /** Width of a word in parts of the letter size. */
    static double width(String word) {
        int thousandths = 0;
        for (int i = 0; i < word.length(); i += Character.charCount(word.codePointAt(i))) {
            int letter = word.codePointAt(i);
            int place = letter - ' ';
            thousandths += place >= 0 && place < WIDTHS.length ? WIDTHS[place] : letter > 0x2E7F ? 1000 : 600;
        }
        return thousandths / 1000.0;
    }
}
