// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.io.IOException;
import java.io.StringReader;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import spadework.press.template.TemplateFault;
import spadework.reason.Reason;

/** Reads what a page template gave. */
public final class PageSource {
    private static final Pattern DECLARED = Pattern.compile("font-family\\s*:[^;}]*");
    private static final DocumentBuilderFactory BUILDERS = builders();

    private PageSource() {}

    /**
     * The page as a tree.
     *
     * @throws TemplateFault if it is not well-formed XHTML, or declares a document type, which we do not read
     */
    public static Document read(String template, String page) {
        try {
            DocumentBuilder builder;
            synchronized (BUILDERS) {
                builder = BUILDERS.newDocumentBuilder();
            }
            builder.setErrorHandler(new Strict());
            return builder.parse(new InputSource(new StringReader(page)));
        } catch (SAXParseException e) {
            throw new TemplateFault(
                    template,
                    "the page it gives is not well-formed XHTML at line " + e.getLineNumber() + ", column "
                            + e.getColumnNumber() + ": " + Reason.of(e),
                    e);
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new TemplateFault(template, "the page it gives cannot be read: " + Reason.of(e), e);
        }
    }

    /**
     * Has all text set in our one family, whatever family the page names: text in a family that is not registered
     * would vanish from the page without a word, and in a drawing would take whatever font the machine has.
     */
    static void setInOneFamily(Document page, String family) {
        String declared = "font-family: \"" + family + "\"";
        NodeList all = page.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.hasAttribute("style")) {
                element.setAttribute(
                        "style", DECLARED.matcher(element.getAttribute("style")).replaceAll(declared));
            }
            if (element.hasAttribute("font-family") || element.getLocalName().equals("svg")) {
                element.setAttribute("font-family", family);
            }
            if (element.getLocalName().equals("style")) {
                element.setTextContent(
                        DECLARED.matcher(element.getTextContent()).replaceAll(declared));
            }
        }
        Element rule = page.createElementNS(page.getDocumentElement().getNamespaceURI(), "style");
        rule.setTextContent("* { " + declared + " !important }");
        page.getElementsByTagName("head").item(0).appendChild(rule);
    }

    /**
     * The text of the {@code title} element.
     *
     * @throws TemplateFault if there is none: without it the document has no name of its own
     */
    static String title(String template, Document page) {
        NodeList titles = page.getElementsByTagName("title");
        String title =
                titles.getLength() == 0 ? "" : titles.item(0).getTextContent().strip();
        if (title.isEmpty()) {
            throw new TemplateFault(template, "the page it gives has no <title>", null);
        }
        return title;
    }

    private static DocumentBuilderFactory builders() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Every fault stops. */
    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
