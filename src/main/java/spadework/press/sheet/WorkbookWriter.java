// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spadework.press.template.TemplateFault;
import spadework.reason.Reason;

/** Makes the file of a described workbook. */
public final class WorkbookWriter {
    private WorkbookWriter() {}

    /**
     * The file.
     *
     * @param template named in faults
     * @param issued the only date in the file's properties
     * @throws TemplateFault if the description asks for something that is not there or a formula gives an error
     */
    static byte[] write(String template, WorkbookPlan plan, LocalDate issued) {
        XSSFWorkbook book = new XSSFWorkbook();
        try {
            letters(book, plan);
            SheetNames names = new SheetNames(template);
            SheetFormulas formulas = new SheetFormulas(template);
            SheetWriter writer = new SheetWriter(template, plan, new SheetCellStyles(book), names, formulas);
            for (SheetPlan from : plan.sheets()) {
                XSSFSheet sheet = book.createSheet(names.sheet(from.name()));
                writer.write(from, sheet);
                SheetPrintSetup.set(plan, from, sheet);
            }
            names.define(book);
            formulas.workOut(book);
            book.setActiveSheet(0);
            properties(book.getProperties(), plan, issued);
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            book.write(file);
            return WorkbookZip.withFixedTimes(file.toByteArray());
        } catch (IOException | InvalidFormatException e) {
            throw new TemplateFault(template, "its workbook cannot be written: " + Reason.of(e), e);
        } finally {
            // Closing a new workbook would write it once more.
            book.getPackage().revert();
        }
    }

    /** Column widths are counted in digits of the workbook's first font. */
    private static void letters(XSSFWorkbook book, WorkbookPlan plan) {
        SheetStyle text = plan.styles().values().iterator().next();
        XSSFFont first = book.getFontAt(0);
        first.setFontName(text.font());
        first.setFontHeight(text.size());
    }

    private static void properties(POIXMLProperties properties, WorkbookPlan plan, LocalDate issued)
            throws InvalidFormatException {
        Optional<Date> date =
                Optional.of(Date.from(issued.atStartOfDay(ZoneOffset.UTC).toInstant()));
        POIXMLProperties.CoreProperties core = properties.getCoreProperties();
        core.setTitle(plan.title());
        core.setSubjectProperty(plan.subject());
        core.setCreator(plan.creator());
        core.setCreated(date);
        core.setModified(date);
        core.getUnderlyingProperties().setLanguageProperty(plan.language());
        properties.getExtendedProperties().getUnderlyingProperties().setApplication("Spadework");
    }
}
