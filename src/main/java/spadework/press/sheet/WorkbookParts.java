// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** The parts that hold a workbook together (ECMA-376 part 1, 18.2, and part 2). */
final class WorkbookParts {
    /** The namespace of workbooks. */
    static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    private static final String TYPE = "application/vnd.openxmlformats-";

    private WorkbookParts() {}

    /** The kind of each part by its path. */
    static byte[] types(int sheets) {
        XmlPart part = new XmlPart("Types", PACKAGE + "content-types");
        part.empty("Default", "Extension", "rels", "ContentType", TYPE + "package.relationships+xml");
        part.empty("Default", "Extension", "xml", "ContentType", "application/xml");
        type(part, "/docProps/app.xml", "officedocument.extended-properties+xml");
        type(part, "/docProps/core.xml", "package.core-properties+xml");
        type(part, "/xl/workbook.xml", "officedocument.spreadsheetml.sheet.main+xml");
        type(part, "/xl/styles.xml", "officedocument.spreadsheetml.styles+xml");
        type(part, "/xl/sharedStrings.xml", "officedocument.spreadsheetml.sharedStrings+xml");
        for (int i = 1; i <= sheets; i++) {
            type(part, "/xl/" + sheet(i), "officedocument.spreadsheetml.worksheet+xml");
        }
        return part.bytes();
    }

    /** Where the file's own parts are. */
    static byte[] fileLinks() {
        XmlPart part = new XmlPart("Relationships", PACKAGE + "relationships");
        link(part, "rId1", OFFICE + "relationships/officeDocument", "xl/workbook.xml");
        link(part, "rId2", OFFICE + "relationships/extended-properties", "docProps/app.xml");
        link(part, "rId3", PACKAGE + "relationships/metadata/core-properties", "docProps/core.xml");
        return part.bytes();
    }

    /** Where the workbook's parts are: its sheets first, by their numbers. */
    static byte[] bookLinks(int sheets) {
        XmlPart part = new XmlPart("Relationships", PACKAGE + "relationships");
        for (int i = 1; i <= sheets; i++) {
            link(part, "rId" + i, OFFICE + "relationships/worksheet", sheet(i));
        }
        link(part, "rId" + (sheets + 1), OFFICE + "relationships/styles", "styles.xml");
        link(part, "rId" + (sheets + 2), OFFICE + "relationships/sharedStrings", "sharedStrings.xml");
        return part.bytes();
    }

    /** The path of a sheet, counted from 1, below the workbook's folder. */
    static String sheet(int number) {
        return "worksheets/sheet" + number + ".xml";
    }

    /** The list of sheets and names. */
    static byte[] book(List<GridSheet> sheets, Map<String, String> names) {
        XmlPart part = new XmlPart("workbook", MAIN).attributes("xmlns:r", OFFICE + "relationships");
        part.empty("workbookPr", "date1904", 0);
        part.open("bookViews").empty("workbookView", "activeTab", 0).close();
        part.open("sheets");
        for (int i = 1; i <= sheets.size(); i++) {
            part.empty("sheet", "name", sheets.get(i - 1).name(), "sheetId", i, "r:id", "rId" + i);
        }
        part.close();
        part.open("definedNames");
        for (int i = 0; i < sheets.size(); i++) {
            int at = i;
            SheetPage.names(sheets.get(i))
                    .forEach((name, cells) -> part.element("definedName", cells, "name", name, "localSheetId", at));
        }
        names.forEach((name, cells) -> part.element("definedName", cells, "name", name));
        part.close();
        return part.bytes();
    }

    /** The program that wrote the file. */
    static byte[] program() {
        return new XmlPart("Properties", OFFICE + "extended-properties")
                .element("Application", "Spadework")
                .bytes();
    }

    /** Title, subject, language and firm; the only date is that of the issue. */
    static byte[] properties(WorkbookPlan plan, LocalDate issued) {
        XmlPart part = new XmlPart("cp:coreProperties", "")
                .attributes(
                        "xmlns:cp", PACKAGE + "metadata/core-properties",
                        "xmlns:dc", "http://purl.org/dc/elements/1.1/",
                        "xmlns:dcterms", "http://purl.org/dc/terms/",
                        "xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance");
        String time = issued + "T00:00:00Z";
        part.element("dcterms:created", time, "xsi:type", "dcterms:W3CDTF");
        part.element("dc:creator", plan.creator());
        part.element("dc:language", plan.language());
        part.element("dcterms:modified", time, "xsi:type", "dcterms:W3CDTF");
        part.element("dc:subject", plan.subject());
        part.element("dc:title", plan.title());
        return part.bytes();
    }

    private static void type(XmlPart part, String path, String type) {
        part.empty("Override", "PartName", path, "ContentType", TYPE + type);
    }

    private static void link(XmlPart part, String name, String type, String target) {
        part.empty("Relationship", "Id", name, "Type", type, "Target", target);
    }
}
