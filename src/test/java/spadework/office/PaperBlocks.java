// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import spadework.press.WorkbookDump;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.page.PageSource;
import spadework.press.sheet.WorkbookPress;
import spadework.press.svg.PageFigure;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** The words of a bid's papers, paragraph by paragraph, as they are printed. */
public final class PaperBlocks {
    private static final Set<String> BLOCKS = Set.of("p", "li", "td", "th", "h1", "h2", "h3");

    /** Wording that a law prescribes, and what is drawn. */
    private static final Pattern SET_ASIDE =
            Pattern.compile("notice|statement|cancel|told|prescribed|figure|header|footer");

    private static final Pattern WRITTEN = Pattern.compile("<(?:text|title)[^>]*>([^<]*)<");

    private PaperBlocks() {}

    /** By the paper's file name; wording that a law prescribes is set aside. */
    public static Map<String, List<String>> of(Bid bid, Set<PaperKind> papers) {
        Map<String, List<String>> found = new LinkedHashMap<>();
        for (PaperModels.Sheet sheet : PaperModels.of(bid, bid.prepared(papers))) {
            PageInfo info =
                    new PageInfo(sheet.language().tag(), bid.dossier().company().name(), sheet.date());
            found.put(sheet.file(), of(sheet.template(), sheet.model(), info));
        }
        return found;
    }

    /** The texts of the workbooks, by the paper's file name. */
    public static Map<String, List<String>> ofWorkbooks(Bid bid, Set<PaperKind> papers) throws IOException {
        Map<String, List<String>> found = new LinkedHashMap<>();
        for (PaperModels.Sheet sheet : PaperModels.of(bid, bid.prepared(papers))) {
            found.put(
                    sheet.file(),
                    WorkbookDump.texts(WorkbookDump.open(WorkbookPress.print(
                            Templates.bundled(), sheet.template(), sheet.model(), sheet.date(), sheet.language()))));
        }
        return found;
    }

    /** The pages as PDF, by the paper's file name. */
    public static Map<String, byte[]> pages(Bid bid, Set<PaperKind> papers, PagePress press) {
        Map<String, byte[]> found = new LinkedHashMap<>();
        for (PaperModels.Sheet sheet : PaperModels.of(bid, bid.prepared(papers))) {
            PageInfo info =
                    new PageInfo(sheet.language().tag(), bid.dossier().company().name(), sheet.date());
            found.put(sheet.file(), press.print(sheet.template(), sheet.model(), info));
        }
        return found;
    }

    /** The words on the drawings of the papers and those that stand for them, by the paper's file name. */
    public static Map<String, List<String>> ofDrawings(Bid bid, Set<PaperKind> papers) {
        Map<String, List<String>> found = new LinkedHashMap<>();
        for (PaperModels.Sheet sheet : PaperModels.of(bid, bid.prepared(papers))) {
            List<String> texts = new ArrayList<>();
            sheet.model().values().forEach(value -> drawn(value, texts));
            found.put(sheet.file(), texts);
        }
        return found;
    }

    private static void drawn(Object value, List<String> texts) {
        if (value instanceof List<?> several) {
            several.forEach(one -> drawn(one, texts));
        } else if (value instanceof PageFigure figure) {
            texts.add(figure.caption());
            drawn(figure.svg(), texts);
        } else if (value instanceof String svg && svg.startsWith("<svg")) {
            WRITTEN.matcher(svg)
                    .results()
                    .map(text -> text.group(1).replace("&#39;", "'"))
                    .forEach(texts::add);
        }
    }

    /** The blocks of one page, by its template. */
    public static List<String> of(String template, Map<String, Object> model, PageInfo info) {
        Map<String, Object> all = new HashMap<>(model);
        all.put("info", info);
        String page = template + "/page.ftlh";
        List<String> blocks = new ArrayList<>();
        Element root = PageSource.read(page, Templates.bundled().fill(page, all, Language.ofTag(info.language())))
                .getDocumentElement();
        gather((Element) root.getElementsByTagName("body").item(0), blocks);
        return blocks;
    }

    private static void gather(Element element, List<String> blocks) {
        if (SET_ASIDE.matcher(element.getAttribute("class")).find()) {
            return;
        }
        if (BLOCKS.contains(element.getTagName()) && !holdsBlock(element)) {
            NodeList breaks = element.getElementsByTagName("br");
            for (int i = 0; i < breaks.getLength(); i++) {
                breaks.item(i).setTextContent(" ");
            }
            String text = element.getTextContent()
                    .replace('\u00a0', ' ')
                    .replaceAll("\\s+", " ")
                    .strip();
            if (!text.isEmpty()) {
                blocks.add(text);
            }
            return;
        }
        NodeList children = element.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (children.item(i) instanceof Element child) {
                gather(child, blocks);
            }
        }
    }

    private static boolean holdsBlock(Element element) {
        NodeList all = element.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Node one = all.item(i);
            if (BLOCKS.contains(one.getNodeName()) || one.getNodeName().equals("svg")) {
                return true;
            }
        }
        return false;
    }
}
