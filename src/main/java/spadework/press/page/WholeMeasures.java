// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Keeps a figure on one line with its unit: no line ends between 5 ft and 6 in. */
final class WholeMeasures {
    private static final Pattern MEASURE = Pattern.compile(
            "(?<![\\w.])(?:[0-9][0-9,.]*½?|½) (?:ft(?: (?:[0-9]+½?|½) in)?|in|mil|gal|gpm|ton|cy|sf|sy)\\b");
    private static final char NO_BREAK = '\u00a0';
    private static final Set<String> LEFT_ALONE = Set.of("svg", "style", "head");

    private WholeMeasures() {}

    /** Writes every space inside a measure of the page's text as one at which no line ends. */
    static void keep(Document page) {
        keep(page.getDocumentElement());
    }

    private static void keep(Element element) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Text text) {
                text.setData(kept(text.getData()));
            } else if (child instanceof Element inner && !LEFT_ALONE.contains(inner.getLocalName())) {
                keep(inner);
            }
        }
    }

    static String kept(String text) {
        return MEASURE.matcher(text).replaceAll(found -> found.group().replace(' ', NO_BREAK));
    }
}
