// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet comes out of the printer and what stays in sight on the screen. */
public final class SheetPrintSetup {
    /** Inches. */
    private static final double MARGIN = 0.8;

    /** Inches at the sides of a page that lies: the wide tables are there, and their letters must stay large. */
    private static final double LYING_SIDES = 0.6;

    private SheetPrintSetup() {}

    static void set(WorkbookPlan plan, SheetPlan from, XSSFSheet sheet) {
        XSSFPrintSetup page = sheet.getPrintSetup();
        page.setPaperSize(plan.a4() ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE);
        page.setLandscape(from.landscape());
        page.setFitWidth((short) 1);
        page.setFitHeight((short) (from.onePage() ? 1 : 0));
        sheet.setFitToPage(true);
        for (PageMargin side : List.of(PageMargin.LEFT, PageMargin.RIGHT, PageMargin.TOP, PageMargin.BOTTOM)) {
            sheet.setMargin(side, MARGIN);
        }
        if (from.landscape()) {
            sheet.setMargin(PageMargin.LEFT, LYING_SIDES);
            sheet.setMargin(PageMargin.RIGHT, LYING_SIDES);
        }
        sheet.setMargin(PageMargin.FOOTER, MARGIN / 2);
        sheet.setDisplayGridlines(false);
        sheet.getFooter().setLeft(footer(plan.footer().left()));
        sheet.getFooter().setCenter(footer(plan.footer().center()));
        sheet.getFooter().setRight(footer(plan.footer().right()));
        int columns = from.columns().size();
        sheet.getWorkbook()
                .setPrintArea(
                        sheet.getWorkbook().getSheetIndex(sheet),
                        0,
                        columns - 1,
                        0,
                        from.rows().size() - 1);
        for (int i = 0; i < from.rows().size(); i++) {
            if (from.rows().get(i).head()) {
                sheet.setRepeatingRows(new CellRangeAddress(i, i, 0, columns - 1));
                sheet.createFreezePane(0, i + 1);
                return;
            }
        }
    }

    /** Every mark of the text stands for itself; only our two placeholders become codes. */
    private static String footer(String text) {
        return text.replace("&", "&&").replace("{pages}", "&N").replace("{page}", "&P");
    }
}
