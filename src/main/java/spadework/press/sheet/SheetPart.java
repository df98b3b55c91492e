// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.NumericValueEval;
import org.apache.poi.ss.formula.eval.StringValueEval;
import org.apache.poi.ss.formula.eval.ValueEval;

/** The part that holds one sheet (ECMA-376 part 1, 18.3.1.99): its elements stand in the order that is set there. */
final class SheetPart {
    private final XmlPart part = new XmlPart("worksheet", WorkbookParts.MAIN);
    private final GridSheet sheet;
    private final SheetPlan plan;

    private SheetPart(GridSheet sheet) {
        this.sheet = sheet;
        this.plan = sheet.plan();
    }

    /** The part as it is stored; the first sheet is the one in sight when the file is opened. */
    static byte[] of(
            WorkbookPlan book, GridSheet sheet, boolean inSight, SharedWords words, Map<GridCell, ValueEval> results) {
        SheetPart made = new SheetPart(sheet);
        made.part.open("sheetPr").empty("pageSetUpPr", "fitToPage", 1).close();
        made.view(inSight);
        made.part.empty("sheetFormatPr", "defaultRowHeight", 15);
        made.columns();
        made.part.open("sheetData");
        for (int row = 0; row < sheet.count(); row++) {
            made.row(row, words, results);
        }
        made.part.close();
        made.joined();
        SheetPage.write(made.part, book, made.plan);
        return made.part.bytes();
    }

    private void view(boolean inSight) {
        part.open("sheetViews").open("sheetView", "showGridLines", 0, "tabSelected", SheetLooks.flag(inSight));
        part.attributes("workbookViewId", 0);
        int head = SheetPage.headRow(plan);
        if (head >= 0) {
            part.empty("pane", "ySplit", head + 1, "topLeftCell", GridCell.address(head + 1, 0));
            part.attributes("activePane", "bottomLeft", "state", "frozen");
            part.empty("selection", "pane", "bottomLeft");
        }
        part.close().close();
    }

    private void columns() {
        part.open("cols");
        for (int i = 0; i < plan.columns().size(); i++) {
            part.empty(
                    "col",
                    "min",
                    i + 1,
                    "max",
                    i + 1,
                    "width",
                    plan.columns().get(i).width(),
                    "customWidth",
                    1);
        }
        part.close();
    }

    private void row(int row, SharedWords words, Map<GridCell, ValueEval> results) {
        part.open("row", "r", row + 1, "ht", sheet.height(row), "customHeight", 1);
        for (GridCell cell : sheet.row(row)) {
            String at = cell.address();
            switch (cell.type()) {
                case STRING ->
                    part.open("c", "r", at, "s", cell.look(), "t", "s")
                            .element("v", Integer.toString(words.number(cell.text())))
                            .close();
                case NUMERIC ->
                    part.open("c", "r", at, "s", cell.look())
                            .element("v", Double.toString(cell.number()))
                            .close();
                case FORMULA -> formula(cell, results.get(cell));
                default -> part.empty("c", "r", at, "s", cell.look());
            }
        }
        part.close();
    }

    private void formula(GridCell cell, ValueEval result) {
        part.open("c", "r", cell.address(), "s", cell.look());
        // A truth value is a number to the engine too, so it is asked for first.
        if (result instanceof BoolEval truth) {
            part.attributes("t", "b").element("f", cell.text()).element("v", truth.getBooleanValue() ? "1" : "0");
        } else if (result instanceof NumericValueEval number) {
            part.element("f", cell.text()).element("v", Double.toString(number.getNumberValue()));
        } else {
            String shown = result instanceof StringValueEval string ? string.getStringValue() : "";
            part.attributes("t", "str").element("f", cell.text()).element("v", SheetText.stored(shown));
        }
        part.close();
    }

    private void joined() {
        List<String> joined = sheet.joined();
        if (!joined.isEmpty()) {
            part.open("mergeCells", "count", joined.size());
            joined.forEach(cells -> part.empty("mergeCell", "ref", cells));
            part.close();
        }
    }
}
