// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import spadework.wording.Language;
import spadework.wording.Wording;

/**
 * A paper to be read beside the one that governs, whatever its template says: marked at the head of every page, and
 * with no line to sign or to fill in.
 */
final class ReadingCopy {
    private static final Wording WORDS = Wording.beside(ReadingCopy.class);

    /** Tables to sign; a sentence stands in their place. */
    private static final Set<String> SIGN = Set.of("sign", "given");

    /** Lines to sign or to fill in. */
    private static final Set<String> LINES = Set.of("line", "line-for", "blank");

    private ReadingCopy() {}

    static void mark(Document page, Language language, Language governing) {
        Wording said = WORDS.in(language);
        String name = said.get("reading-copy.language." + governing.code());
        withClass(page, SIGN)
                .forEach(table -> table.getParentNode()
                        .replaceChild(paragraph(page, said.get("reading-copy.signed", name)), table));
        withClass(page, LINES).forEach(line -> line.getParentNode().removeChild(line));
        Element body = (Element) page.getElementsByTagName("body").item(0);
        Element mark = page.createElementNS(body.getNamespaceURI(), "strong");
        mark.setTextContent(said.get("reading-copy.mark", name));
        List<Element> headers = withClass(page, Set.of("header"));
        if (headers.isEmpty()) {
            body.insertBefore(mark, body.getFirstChild());
        } else {
            headers.get(0).appendChild(page.createElementNS(body.getNamespaceURI(), "br"));
            headers.get(0).appendChild(mark);
        }
    }

    private static List<Element> withClass(Document page, Set<String> names) {
        List<Element> found = new ArrayList<>();
        NodeList all = page.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (isOf(element, names)) {
                found.add(element);
            }
        }
        return found;
    }

    private static boolean isOf(Element element, Set<String> names) {
        return List.of(element.getAttribute("class").split(" ")).stream().anyMatch(names::contains);
    }

    private static Element paragraph(Document page, String text) {
        Element made = page.createElementNS(page.getDocumentElement().getNamespaceURI(), "p");
        made.setTextContent(text);
        return made;
    }
}
