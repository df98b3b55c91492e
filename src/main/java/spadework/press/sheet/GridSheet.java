// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationSheet;

/** The cells of one sheet, row by row, with the heights of the rows and the cells that are joined. */
final class GridSheet implements EvaluationSheet {
    private final String name;
    private final SheetPlan plan;
    private final List<GridCell[]> rows = new ArrayList<>();
    private final List<Double> heights = new ArrayList<>();
    private final List<String> joined = new ArrayList<>();

    /** An empty sheet. */
    GridSheet(String name, SheetPlan plan) {
        this.name = name;
        this.plan = plan;
    }

    String name() {
        return name;
    }

    SheetPlan plan() {
        return plan;
    }

    /** Adds a row below the others; its height is in points. */
    void add(GridCell[] cells, double height) {
        rows.add(cells);
        heights.add(height);
    }

    /** Joins cells of one row into one. */
    void join(int row, int first, int last) {
        joined.add(GridCell.address(row, first) + ":" + GridCell.address(row, last));
    }

    int count() {
        return rows.size();
    }

    GridCell[] row(int row) {
        return rows.get(row);
    }

    double height(int row) {
        return heights.get(row);
    }

    /** As {@code A3:B3}, in the order in which they were joined. */
    List<String> joined() {
        return List.copyOf(joined);
    }

    @Override
    public EvaluationCell getCell(int row, int column) {
        return row < rows.size() && column < rows.get(row).length ? rows.get(row)[column] : null;
    }

    @Override
    public void clearAllCachedResultValues() {
        // Nothing is kept here.
    }

    @Override
    public int getLastRowNum() {
        return rows.size() - 1;
    }

    @Override
    public boolean isRowHidden(int row) {
        return false;
    }
}
