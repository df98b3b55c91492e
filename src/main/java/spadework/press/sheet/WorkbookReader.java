// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import spadework.press.sheet.SheetPlan.Cell;
import spadework.press.sheet.SheetPlan.CellKind;
import spadework.press.sheet.SheetPlan.Column;
import spadework.press.sheet.SheetPlan.Row;
import spadework.press.sheet.WorkbookPlan.Footer;
import spadework.press.template.TemplateFault;
import spadework.reason.Reason;

/**
 * Reads the sheet language in which a template describes a workbook.
 *
 * <pre>{@code
 * <workbook title="…" subject="…" language="en-US" creator="the firm" paper="letter|a4">
 *   <footer left="…" center="…" right="Page {page} of {pages}"/>
 *   <style name="total" font="Arial" size="10" bold="yes" italic="no" color="000000" tint="EEEEEE"
 *          over="none|hair|thin|medium" under="…" align="left|center|right"/>
 *   <sheet name="…" landscape="yes|no" pages="1|many">
 *     <column key="quantity" width="12"/>
 *     <row style="head" head="yes">
 *       <cell kind="text|number|money|percent|date|formula" gives="…" style="…" at="quantity" to="price"
 *             name="job_total" range="line_prices" like="1,306.5 cf">…</cell>
 *     </row>
 *   </sheet>
 * </workbook>
 * }</pre>
 *
 * <p>Columns and rows are never counted: a cell follows the one before it unless {@code at} names its column, and
 * spreads up to the column named by {@code to}. In a formula {@code {quantity}} is the cell of that column in the same
 * row; a {@code name} calls one cell and a {@code range} all cells of a column that carry it, from any sheet. A
 * percentage is written as a fraction, {@code 0.12}, or in points, {@code 12%}; a date as {@code 2026-03-03}; amounts
 * and numbers as plain decimals. A formula says with {@code gives} what its result is: number, money (the default),
 * percent, date or text. {@code like} shows a printed figure whose decimals the cell copies. The head row stays in
 * sight and is repeated on every printed page.
 */
public final class WorkbookReader {
    private final String template;
    private final XMLStreamReader xml;

    private WorkbookReader(String template, XMLStreamReader xml) {
        this.template = template;
        this.xml = xml;
    }

    /**
     * Reads what a template gave.
     *
     * @throws TemplateFault if it is not written in the sheet language
     */
    static WorkbookPlan read(String template, String filled) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        try {
            String drawable = SheetText.drawable(filled);
            return new WorkbookReader(template, factory.createXMLStreamReader(new StringReader(drawable))).workbook();
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
            throw fault(template, line, "it is malformed: " + Reason.of(e), e);
        }
    }

    /** A fault of what the template gave; the line is that of the filled template, not of the template. */
    static TemplateFault fault(String template, int line, String problem, Throwable cause) {
        return new TemplateFault(template, "line " + line + " of the sheets it gave: " + problem, cause);
    }

    private WorkbookPlan workbook() throws XMLStreamException {
        xml.nextTag();
        SheetTag tag = tag("workbook", "title", "subject", "language", "creator", "paper");
        Footer footer = new Footer("", "", "");
        Map<String, SheetStyle> styles = new LinkedHashMap<>();
        List<SheetPlan> sheets = new ArrayList<>();
        while (child()) {
            switch (xml.getLocalName()) {
                case "footer" -> footer = footer();
                case "style" -> style(styles);
                case "sheet" -> sheets.add(sheet());
                default -> throw unknown("footer, style or sheet");
            }
        }
        if (sheets.isEmpty()) {
            throw tag.fault("the workbook has no sheet");
        }
        return new WorkbookPlan(
                tag.text("title"),
                tag.text("subject"),
                tag.text("language"),
                tag.text("creator"),
                tag.oneOf("paper", "letter", "a4").equals("a4"),
                footer,
                styles,
                sheets);
    }

    private Footer footer() throws XMLStreamException {
        SheetTag tag = tag("footer", "left", "center", "right");
        close();
        return new Footer(tag.text("left", ""), tag.text("center", ""), tag.text("right", ""));
    }

    private void style(Map<String, SheetStyle> styles) throws XMLStreamException {
        SheetTag tag =
                tag("style", "name", "font", "size", "bold", "italic", "color", "tint", "over", "under", "align");
        close();
        styles.put(
                tag.text("name"),
                new SheetStyle(
                        tag.text("font"),
                        tag.number("size"),
                        tag.yes("bold"),
                        tag.yes("italic"),
                        tag.color("color").orElse("000000"),
                        tag.color("tint"),
                        tag.choice("over", SheetStyle.Rule.class).orElse(SheetStyle.Rule.NONE),
                        tag.choice("under", SheetStyle.Rule.class).orElse(SheetStyle.Rule.NONE),
                        tag.choice("align", SheetStyle.TextAlign.class)));
    }

    private SheetPlan sheet() throws XMLStreamException {
        SheetTag tag = tag("sheet", "name", "landscape", "pages");
        List<Column> columns = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        while (child()) {
            switch (xml.getLocalName()) {
                case "column" -> columns.add(column());
                case "row" -> rows.add(row(columns));
                default -> throw unknown("column or row");
            }
        }
        boolean onePage = tag.oneOf("pages", "many", "1").equals("1");
        return new SheetPlan(tag.text("name"), tag.yes("landscape"), onePage, columns, rows);
    }

    private Column column() throws XMLStreamException {
        SheetTag tag = tag("column", "key", "width");
        close();
        return new Column(tag.text("key"), tag.number("width"));
    }

    private Row row(List<Column> columns) throws XMLStreamException {
        SheetTag tag = tag("row", "style", "head");
        String style = tag.text("style", "text");
        List<String> keys = columns.stream().map(Column::key).toList();
        List<Cell> cells = new ArrayList<>();
        int next = 0;
        while (child()) {
            Cell cell = cell(keys, next, style);
            next = keys.indexOf(cell.to()) + 1;
            cells.add(cell);
        }
        return new Row(style, tag.yes("head"), cells);
    }

    private Cell cell(List<String> keys, int next, String rowStyle) throws XMLStreamException {
        SheetTag tag = tag("cell", "kind", "gives", "style", "at", "to", "name", "range", "like");
        CellKind kind = tag.choice("kind", CellKind.class).orElse(CellKind.TEXT);
        CellKind gives =
                kind == CellKind.FORMULA ? tag.choice("gives", CellKind.class).orElse(CellKind.MONEY) : kind;
        String at = tag.find("at").orElse(next < keys.size() ? keys.get(next) : "");
        String to = tag.find("to").orElse(at);
        if (keys.indexOf(at) < next || keys.indexOf(to) < keys.indexOf(at)) {
            throw tag.fault("there is no free column for this cell among " + keys);
        }
        int line = tag.line();
        String content = xml.getElementText();
        return new Cell(
                kind,
                gives,
                tag.text("style", rowStyle),
                at,
                to,
                tag.find("name"),
                tag.find("range"),
                tag.find("like"),
                kind == CellKind.TEXT ? content : content.strip(),
                line);
    }

    private SheetTag tag(String name, String... allowed) {
        if (!xml.getLocalName().equals(name)) {
            throw unknown(name);
        }
        return SheetTag.of(template, xml, List.of(allowed));
    }

    /** Moves to the next child; false at the end of the parent. Text between tags is a fault. */
    private boolean child() throws XMLStreamException {
        return xml.nextTag() == XMLStreamConstants.START_ELEMENT;
    }

    private void close() throws XMLStreamException {
        if (child()) {
            throw unknown("nothing");
        }
    }

    private TemplateFault unknown(String allowed) {
        String found = "found <" + xml.getLocalName() + ">, allowed here: " + allowed;
        return fault(template, xml.getLocation().getLineNumber(), found, null);
    }
}
