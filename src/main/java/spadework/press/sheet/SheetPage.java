// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.PrintSetup;

/** How a sheet comes out of the printer and what stays in sight on the screen. */
final class SheetPage {
    /** Inches. */
    private static final double MARGIN = 0.8;

    /** Inches at the sides of a page that lies: the wide tables are there, and their letters must stay large. */
    private static final double LYING_SIDES = 0.6;

    /** Inches from the edge to a header, of which there is none: what spreadsheets write. */
    private static final double HEADER = 0.3;

    private SheetPage() {}

    /** The row that heads the table, from 0; −1 for none. */
    static int headRow(SheetPlan plan) {
        for (int i = 0; i < plan.rows().size(); i++) {
            if (plan.rows().get(i).head()) {
                return i;
            }
        }
        return -1;
    }

    /** Writes margins, paper and footer into the part of a sheet. */
    static void write(XmlPart part, WorkbookPlan book, SheetPlan plan) {
        double sides = plan.landscape() ? LYING_SIDES : MARGIN;
        part.empty("pageMargins", "left", sides, "right", sides, "top", MARGIN, "bottom", MARGIN);
        part.attributes("header", HEADER, "footer", MARGIN / 2);
        part.empty("pageSetup", "paperSize", book.a4() ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE);
        part.attributes("fitToWidth", 1, "fitToHeight", SheetLooks.flag(plan.onePage()));
        part.attributes("orientation", plan.landscape() ? "landscape" : "portrait");
        WorkbookPlan.Footer footer = book.footer();
        String words = side("L", footer.left()) + side("C", footer.center()) + side("R", footer.right());
        if (!words.isEmpty()) {
            part.open("headerFooter").element("oddFooter", words).close();
        }
    }

    /** The names by which spreadsheets know what to print and what to repeat, with the cells they stand for. */
    static Map<String, String> names(GridSheet sheet) {
        Map<String, String> names = new LinkedHashMap<>();
        int rows = sheet.count();
        int columns = sheet.plan().columns().size();
        if (rows > 0 && columns > 0) {
            names.put("_xlnm.Print_Area", SheetNames.cells(sheet.name(), 0, rows - 1, 0, columns - 1));
        }
        int head = headRow(sheet.plan());
        if (head >= 0) {
            names.put("_xlnm.Print_Titles", SheetNames.rows(sheet.name(), head, head));
        }
        return names;
    }

    /** Every mark of the text stands for itself; only our two placeholders become codes. */
    private static String side(String code, String text) {
        return text.isEmpty()
                ? ""
                : "&" + code + text.replace("&", "&&").replace("{pages}", "&N").replace("{page}", "&P");
    }
}
