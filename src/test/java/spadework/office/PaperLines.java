// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import spadework.press.page.PageInfo;
import spadework.press.page.PageSource;
import spadework.press.template.Templates;

/**
 * What the papers of a bid and their workbooks say, line by line, with the heading or the sheet that a line stands
 * under. A row of a table is one line, its cells apart.
 */
final class PaperLines {
    private static final Set<String> HEADINGS = Set.of("h1", "h2", "h3");
    private static final Set<String> BLOCKS = Set.of("p", "li", "tr");

    private final String paper;
    private final List<Line> lines = new ArrayList<>();
    private String under = "";

    private PaperLines(String paper) {
        this.paper = paper;
    }

    /**
     * A line.
     *
     * @param paper file name of the paper without ending
     * @param under the heading, or the name of the sheet
     */
    record Line(String paper, String under, String text) {}

    static List<Line> of(Bid bid, Set<PaperKind> papers) {
        List<Line> all = new ArrayList<>();
        for (PaperModels.Sheet sheet : PaperModels.of(bid, bid.prepared(papers))) {
            Map<String, Object> model = new HashMap<>(sheet.model());
            model.put("info", new PageInfo("en-US", bid.dossier().company().name(), sheet.date()));
            model.put("languageTag", "en-US");
            all.addAll(of(sheet.file(), root(sheet.template() + "/page.ftlh", model)));
            all.addAll(of(sheet.file(), root(sheet.template() + "/workbook.ftlx", model)));
        }
        return all;
    }

    static List<Line> of(Bid bid) {
        return of(bid, EnumSet.complementOf(EnumSet.of(PaperKind.COST_SHEET)));
    }

    private static Element root(String template, Map<String, Object> model) {
        return PageSource.read(template, Templates.bundled().fill(template, model))
                .getDocumentElement();
    }

    private static List<Line> of(String paper, Element root) {
        PaperLines found = new PaperLines(paper);
        found.gather(root);
        return found.lines;
    }

    private void gather(Element element) {
        String name = element.getTagName();
        if (HEADINGS.contains(name)) {
            under = text(element);
        } else if (name.equals("sheet")) {
            under = element.getAttribute("name");
        }
        if (name.equals("row") || (BLOCKS.contains(name) && !holds(element))) {
            lines.add(new Line(paper, under, name.equals("p") || name.equals("li") ? text(element) : row(element)));
            return;
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element some) {
                gather(some);
            }
        }
    }

    /** Whether a row is there for the layout alone: other rows, lists or paragraphs stand in its cells. */
    private static boolean holds(Element element) {
        if (!element.getTagName().equals("tr")) {
            return false;
        }
        boolean described = holds(element, "h2") && holds(element, "p");
        return described || holds(element, "li") || holds(element, "tr");
    }

    private static boolean holds(Element element, String tag) {
        return element.getElementsByTagName(tag).getLength() > 0;
    }

    private static String row(Element element) {
        List<String> cells = new ArrayList<>();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element cell) {
                cells.add(text(cell));
            }
        }
        return String.join(" | ", cells);
    }

    private static String text(Element element) {
        StringBuilder text = new StringBuilder();
        add(element, text);
        return text.toString().replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
    }

    private static void add(Node node, StringBuilder text) {
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element some) {
                if (!some.getTagName().equals("svg")) {
                    text.append(some.getTagName().equals("br") ? " " : "");
                    add(some, text);
                }
            } else {
                text.append(child.getTextContent());
            }
        }
    }
}
