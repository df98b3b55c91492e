// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.io.IOException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import spadework.wording.Language;
import spadework.wording.Wording;

/** The code of the register at the foot of an issued paper, put there whatever the template says. */
public final class RecordCode {
    private static final Wording WORDS = Wording.beside(RecordCode.class);

    /** In any language, whatever breaks its lines. */
    private static final Pattern PRINTED = Pattern.compile("(?:"
            + Language.all().stream()
                    .map(language -> label(language, "").strip().replaceAll("\\s+", "\\\\s+"))
                    .collect(Collectors.joining("|"))
            + ")\\s+([0-9]+(?:-[0-9a-f]{4}){4})");

    private RecordCode() {}

    /** Puts the code into the running footer, or below the text of a page that has none. */
    static void put(Document page, String code, Language language) {
        if (code.isEmpty()) {
            return;
        }
        Element foot = footer(page);
        if (foot == null) {
            Element body = (Element) page.getElementsByTagName("body").item(0);
            foot = page.createElementNS(body.getNamespaceURI(), "p");
            body.appendChild(foot);
            foot.setTextContent(label(language, code));
            return;
        }
        NodeList inside = foot.getElementsByTagName("p");
        Element within = inside.getLength() > 0 ? (Element) inside.item(inside.getLength() - 1) : foot;
        Element line = page.createElementNS(within.getNamespaceURI(), "span");
        line.setAttribute("style", "white-space: nowrap");
        line.setTextContent(label(language, code));
        within.appendChild(page.createElementNS(within.getNamespaceURI(), "br"));
        within.appendChild(line);
    }

    private static String label(Language language, String code) {
        return WORDS.in(language).get("record-code.label", code);
    }

    private static Element footer(Document page) {
        NodeList all = page.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if ((" " + element.getAttribute("class") + " ").contains(" footer ")) {
                return element;
            }
        }
        return null;
    }

    /**
     * The code that a PDF carries.
     *
     * @throws IOException if it is no PDF that can be read
     */
    public static Optional<String> in(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Matcher printed = PRINTED.matcher(new PDFTextStripper().getText(document));
            return printed.find() ? Optional.of(printed.group(1)) : Optional.empty();
        }
    }
}
