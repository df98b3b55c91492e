// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spadework.press.sheet.SheetPlan.Cell;
import spadework.press.template.TemplateFault;
import spadework.reason.Reason;

/** The formulas of a workbook: kept until every name is known, then written and worked out. */
public final class SheetFormulas {
    private static final Pattern COLUMN = Pattern.compile("\\{([A-Za-z]+)}");

    private final String template;
    private final List<Waiting> waiting = new ArrayList<>();

    SheetFormulas(String template) {
        this.template = template;
    }

    private record Waiting(Cell plan, XSSFCell cell, String formula) {}

    /** Keeps a formula, with {@code {key}} made the cell of that column in the same row. */
    void add(SheetPlan sheet, Cell plan, XSSFCell cell) {
        String formula = COLUMN.matcher(plan.content()).replaceAll(found -> {
            int column = sheet.indexOf(found.group(1));
            if (column < 0) {
                throw WorkbookReader.fault(template, plan.line(), "there is no column " + found.group(1), null);
            }
            return Matcher.quoteReplacement(new CellReference(cell.getRowIndex(), column).formatAsString());
        });
        waiting.add(new Waiting(plan, cell, formula));
    }

    /**
     * Writes the formulas and their results, so that the file shows figures before anybody recalculates it.
     *
     * @throws TemplateFault if a formula cannot be read or gives an error
     */
    void workOut(XSSFWorkbook book) {
        for (Waiting one : waiting) {
            try {
                one.cell().setCellFormula(one.formula());
            } catch (FormulaParseException e) {
                throw WorkbookReader.fault(template, one.plan().line(), Reason.of(e), e);
            }
        }
        XSSFFormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
        for (Waiting one : waiting) {
            if (evaluator.evaluateFormulaCell(one.cell()) == CellType.ERROR) {
                String problem = one.formula() + " gives " + one.cell().getErrorCellString();
                throw WorkbookReader.fault(template, one.plan().line(), problem, null);
            }
        }
    }
}
