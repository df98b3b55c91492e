// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;

/**
 * A cell as it is written.
 *
 * @param sheet on which it stands
 * @param row from 0
 * @param column from 0
 * @param look number of its look among {@link SheetLooks}
 * @param type blank, string, numeric or formula
 * @param text of a string, or the formula without its sign
 * @param number of a numeric cell
 */
record GridCell(GridSheet sheet, int row, int column, int look, CellType type, String text, double number)
        implements EvaluationCell {

    static GridCell blank(GridSheet sheet, int row, int column, int look) {
        return new GridCell(sheet, row, column, look, CellType.BLANK, "", 0);
    }

    /** The same place with words or a formula. */
    GridCell with(CellType kind, String words) {
        return new GridCell(sheet, row, column, look, kind, words, 0);
    }

    /** The same place with a number. */
    GridCell with(double value) {
        return new GridCell(sheet, row, column, look, CellType.NUMERIC, "", value);
    }

    /** As {@code B7}. */
    String address() {
        return address(row, column);
    }

    static String address(int row, int column) {
        return CellReference.convertNumToColString(column) + (row + 1);
    }

    @Override
    public Object getIdentityKey() {
        return address() + "@" + sheet.name();
    }

    @Override
    public EvaluationSheet getSheet() {
        return sheet;
    }

    @Override
    public int getRowIndex() {
        return row;
    }

    @Override
    public int getColumnIndex() {
        return column;
    }

    @Override
    public CellType getCellType() {
        return type;
    }

    @Override
    public double getNumericCellValue() {
        return number;
    }

    @Override
    public String getStringCellValue() {
        return text;
    }

    @Override
    public boolean getBooleanCellValue() {
        throw new IllegalStateException("no cell is written as a truth value");
    }

    @Override
    public int getErrorCellValue() {
        throw new IllegalStateException("no cell is written as an error");
    }

    @Override
    public CellRangeAddress getArrayFormulaRange() {
        throw new IllegalStateException("no formula spreads over cells");
    }

    @Override
    public boolean isPartOfArrayFormulaGroup() {
        return false;
    }

    @Override
    public CellType getCachedFormulaResultType() {
        throw new IllegalStateException("results are worked out, never read");
    }
}
