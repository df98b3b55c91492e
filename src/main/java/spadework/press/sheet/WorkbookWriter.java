// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.formula.eval.ValueEval;
import spadework.press.template.TemplateFault;

/**
 * Makes the file of a described workbook (ECMA-376, Office Open XML). Its parts are written one after the other: the
 * usual library's model of a workbook takes most of a short run to start.
 */
final class WorkbookWriter {
    private WorkbookWriter() {}

    /**
     * The file.
     *
     * @param template named in faults
     * @param issued the only date in the file's properties
     * @throws TemplateFault if the description asks for something that is not there or a formula gives an error
     */
    static byte[] write(String template, WorkbookPlan plan, LocalDate issued) {
        SheetNames names = new SheetNames(template);
        SheetFormulas formulas = new SheetFormulas(template);
        SheetLooks looks = new SheetLooks(plan);
        SheetWriter writer = new SheetWriter(template, plan, looks, names, formulas);
        List<GridSheet> sheets = new ArrayList<>();
        for (SheetPlan from : plan.sheets()) {
            sheets.add(writer.write(from, names.sheet(from.name())));
        }
        Map<String, String> defined = names.defined();
        Map<GridCell, ValueEval> results = formulas.results(new GridBook(sheets, defined));

        Map<String, byte[]> parts = new LinkedHashMap<>();
        parts.put("[Content_Types].xml", WorkbookParts.types(sheets.size()));
        parts.put("_rels/.rels", WorkbookParts.fileLinks());
        parts.put("docProps/app.xml", WorkbookParts.program());
        parts.put("docProps/core.xml", WorkbookParts.properties(plan, issued));
        parts.put("xl/workbook.xml", WorkbookParts.book(sheets, defined));
        parts.put("xl/_rels/workbook.xml.rels", WorkbookParts.bookLinks(sheets.size()));
        SharedWords words = new SharedWords();
        for (int i = 0; i < sheets.size(); i++) {
            parts.put("xl/" + WorkbookParts.sheet(i + 1), SheetPart.of(plan, sheets.get(i), i == 0, words, results));
        }
        parts.put("xl/styles.xml", looks.part());
        parts.put("xl/sharedStrings.xml", words.part());
        return WorkbookZip.of(parts);
    }
}
