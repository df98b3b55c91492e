// SPDX-License-Identifier: Apache-2.0
package spadework.pricesheet;

import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spadework.wording.Wording;

/** What may be chosen in a column, in lists on a hidden sheet, and that amounts are numbers not below zero. */
final class ChoiceLists {
    private static final Wording WORDS = Wording.beside(ChoiceLists.class);

    private static final String LISTS = "Lists";

    private final XSSFSheet sheet;
    private final XSSFSheet lists;
    private final int rows;
    private int column;

    /** @param rows how many rows of prices the sheet has */
    ChoiceLists(XSSFWorkbook book, XSSFSheet sheet, int rows) {
        this.sheet = sheet;
        this.lists = book.createSheet(LISTS);
        this.rows = rows;
        book.setSheetHidden(book.getSheetIndex(lists), true);
        lists.enableLocking();
    }

    /** The choices of a column; none where there is nothing to choose from. */
    void add(PriceColumn of, List<String> choices) {
        if (choices.isEmpty()) {
            return;
        }
        for (int i = 0; i < choices.size(); i++) {
            XSSFRow row = lists.getRow(i) == null ? lists.createRow(i) : lists.getRow(i);
            row.createCell(column).setCellValue(choices.get(i));
        }
        char letter = (char) ('A' + column++);
        String range = LISTS + "!$" + letter + "$1:$" + letter + "$" + choices.size();
        validate(
                of,
                sheet.getDataValidationHelper().createFormulaListConstraint(range),
                WORDS.get("choice-lists.choose-one-from-list"));
    }

    /** Amounts, waste and production are numbers from zero up. */
    void amounts() {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        for (PriceColumn each : List.of(
                PriceColumn.COST,
                PriceColumn.WASTE,
                PriceColumn.PER_HOUR,
                PriceColumn.SUBCONTRACT,
                PriceColumn.DISPOSAL)) {
            validate(
                    each,
                    helper.createDecimalConstraint(OperatorType.GREATER_OR_EQUAL, "0", null),
                    WORDS.get("choice-lists.number-zero-or-more"));
        }
    }

    private void validate(PriceColumn of, DataValidationConstraint constraint, String text) {
        CellRangeAddressList range = new CellRangeAddressList(1, Math.max(1, rows), of.ordinal(), of.ordinal());
        DataValidation validation = sheet.getDataValidationHelper().createValidation(constraint, range);
        validation.createErrorBox(of.title(), text);
        validation.setShowErrorBox(true);
        sheet.addValidationData(validation);
    }
}
