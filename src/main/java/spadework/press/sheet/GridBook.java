// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaParsingWorkbook;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.SheetIdentifier;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.udf.AggregatingUDFFinder;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Table;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;

/** What the library's formula engine asks of a workbook; its cells are ours, since its own model is slow to start. */
final class GridBook implements EvaluationWorkbook, FormulaParsingWorkbook {
    private final List<GridSheet> sheets;
    private final List<GridName> names = new ArrayList<>();
    private final Map<String, GridName> byName = new HashMap<>();
    private final IdentityHashMap<EvaluationCell, Ptg[]> parsed = new IdentityHashMap<>();

    /** A workbook of these sheets, with each name and the cells it stands for, as {@code Price!$C$3:$C$7}. */
    GridBook(List<GridSheet> sheets, Map<String, String> defined) {
        this.sheets = List.copyOf(sheets);
        defined.forEach((name, cells) -> {
            List<Ptg> definition = List.of(FormulaParser.parse(cells, this, FormulaType.NAMEDRANGE, -1));
            GridName made = new GridName(name, names.size(), definition);
            names.add(made);
            byName.put(name.toLowerCase(Locale.ROOT), made);
        });
    }

    List<GridSheet> sheets() {
        return sheets;
    }

    @Override
    public String getSheetName(int sheet) {
        return sheets.get(sheet).name();
    }

    @Override
    public int getSheetIndex(EvaluationSheet sheet) {
        return sheets.indexOf(sheet);
    }

    @Override
    public int getSheetIndex(String name) {
        for (int i = 0; i < sheets.size(); i++) {
            if (sheets.get(i).name().equalsIgnoreCase(name)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public EvaluationSheet getSheet(int sheet) {
        return sheets.get(sheet);
    }

    @Override
    public ExternalSheet getExternalSheet(String first, String last, int workbook) {
        return new ExternalSheet(null, first);
    }

    @Override
    public EvaluationName getName(NamePtg name) {
        return names.get(name.getIndex());
    }

    @Override
    public EvaluationName getName(String name, int sheet) {
        return byName.get(name.toLowerCase(Locale.ROOT));
    }

    /**
     * The formula of a cell, taken apart.
     *
     * @throws FormulaParseException if it cannot be read
     */
    @Override
    public Ptg[] getFormulaTokens(EvaluationCell cell) {
        return parsed.computeIfAbsent(cell, this::parse);
    }

    private Ptg[] parse(EvaluationCell cell) {
        int sheet = getSheetIndex(cell.getSheet());
        return FormulaParser.parse(cell.getStringCellValue(), this, FormulaType.CELL, sheet, cell.getRowIndex());
    }

    @Override
    public Ptg get3DReferencePtg(CellReference cell, SheetIdentifier sheet) {
        return new Ref3DPxg(sheet, cell);
    }

    @Override
    public Ptg get3DReferencePtg(AreaReference area, SheetIdentifier sheet) {
        return new Area3DPxg(sheet, area);
    }

    @Override
    public UDFFinder getUDFFinder() {
        return AggregatingUDFFinder.DEFAULT;
    }

    @Override
    public SpreadsheetVersion getSpreadsheetVersion() {
        return SpreadsheetVersion.EXCEL2007;
    }

    @Override
    public void clearAllCachedResultValues() {
        // Nothing is kept here.
    }

    @Override
    public Ptg getNameXPtg(String name, SheetIdentifier sheet) {
        return null;
    }

    @Override
    public Table getTable(String name) {
        return null;
    }

    @Override
    public Name createName() {
        throw none();
    }

    @Override
    public int getExternalSheetIndex(String sheet) {
        throw none();
    }

    @Override
    public int getExternalSheetIndex(String workbook, String sheet) {
        throw none();
    }

    @Override
    public ExternalSheet getExternalSheet(int sheet) {
        throw none();
    }

    @Override
    public int convertFromExternSheetIndex(int sheet) {
        throw none();
    }

    @Override
    public ExternalName getExternalName(int sheet, int name) {
        throw none();
    }

    @Override
    public ExternalName getExternalName(String name, String sheet, int workbook) {
        throw none();
    }

    @Override
    public String resolveNameXText(NameXPtg name) {
        throw none();
    }

    private static UnsupportedOperationException none() {
        return new UnsupportedOperationException("a printed workbook calls no other workbook");
    }
}
