// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import spadework.press.sheet.SheetPlan.Cell;
import spadework.press.template.TemplateFault;
import spadework.reason.Reason;

/** The formulas of a workbook: worked out once every cell and name is known, since they may look ahead. */
final class SheetFormulas {
    private static final Pattern COLUMN = Pattern.compile("\\{([A-Za-z]+)}");

    private final String template;
    private final Map<GridCell, Cell> waiting = new LinkedHashMap<>();

    SheetFormulas(String template) {
        this.template = template;
    }

    /** The formula with {@code {key}} made the cell of that column in the same row. */
    String text(SheetPlan sheet, Cell plan, int row) {
        return COLUMN.matcher(plan.content()).replaceAll(found -> {
            int column = sheet.indexOf(found.group(1));
            if (column < 0) {
                throw WorkbookReader.fault(template, plan.line(), "there is no column " + found.group(1), null);
            }
            return Matcher.quoteReplacement(GridCell.address(row, column));
        });
    }

    /** Keeps a formula until it is worked out. */
    void add(Cell plan, GridCell cell) {
        waiting.put(cell, plan);
    }

    /**
     * The results, so that the file shows figures before anybody recalculates it.
     *
     * @throws TemplateFault if a formula cannot be read or gives an error
     */
    Map<GridCell, ValueEval> results(GridBook book) {
        Map<GridCell, ValueEval> results = new LinkedHashMap<>();
        WorkbookEvaluator evaluator = new WorkbookEvaluator(book, IStabilityClassifier.TOTALLY_IMMUTABLE, null);
        waiting.forEach((cell, plan) -> {
            try {
                book.getFormulaTokens(cell);
            } catch (FormulaParseException e) {
                throw WorkbookReader.fault(template, plan.line(), Reason.of(e), e);
            }
        });
        waiting.forEach((cell, plan) -> {
            ValueEval result = evaluator.evaluate(cell);
            if (result instanceof ErrorEval error) {
                throw WorkbookReader.fault(
                        template, plan.line(), cell.text() + " gives " + error.getErrorString(), null);
            }
            results.put(cell, result);
        });
        return results;
    }
}
