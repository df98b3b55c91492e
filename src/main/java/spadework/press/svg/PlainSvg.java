// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * An SVG of the few elements and attributes that {@link SceneSvg} writes: straight lines, rectangles, circles, polygons
 * and words, each with its own ink. Whatever else an SVG may hold makes it not plain.
 *
 * @param width of the view, in its own units
 * @param height of the view, in its own units
 * @param shapes what is drawn, in order
 */
public record PlainSvg(double width, double height, List<Element> shapes) {
    private static final String INK = "#[0-9a-f]{6}";
    private static final String NUMBER = "-?\\d+(\\.\\d+)?";
    private static final String NUMBERS = NUMBER + "( " + NUMBER + ")*";

    /** Attributes of the element itself that do not change what is drawn. */
    private static final Set<String> OF_THE_WHOLE =
            Set.of("xmlns", "version", "role", "aria-label", "alt", "width", "height", "viewBox", "font-family");

    /** What each attribute may hold; these values go into the page's content as they stand. */
    private static final Map<String, Pattern> VALUES = Map.ofEntries(
            value("x", NUMBER),
            value("y", NUMBER),
            value("width", NUMBER),
            value("height", NUMBER),
            value("x1", NUMBER),
            value("y1", NUMBER),
            value("x2", NUMBER),
            value("y2", NUMBER),
            value("cx", NUMBER),
            value("cy", NUMBER),
            value("r", NUMBER),
            value("font-size", NUMBER),
            value("points", NUMBER + "," + NUMBER + "( " + NUMBER + "," + NUMBER + ")*"),
            value("fill", INK + "|none"),
            value("stroke", INK),
            value("stroke-width", NUMBER),
            value("stroke-dasharray", NUMBERS),
            value("text-anchor", "start|middle|end"),
            value("font-weight", "bold|normal"));

    private static final Map<String, Set<String>> ATTRIBUTES = Map.of(
            "line", Set.of("x1", "y1", "x2", "y2", "stroke", "stroke-width", "stroke-dasharray"),
            "rect", Set.of("x", "y", "width", "height", "fill", "stroke", "stroke-width"),
            "circle", Set.of("cx", "cy", "r", "fill", "stroke", "stroke-width"),
            "polygon", Set.of("points", "fill", "stroke", "stroke-width", "stroke-dasharray"),
            "text", Set.of("x", "y", "font-size", "font-weight", "text-anchor", "fill"));

    /** What an element must have to be drawn at all. */
    private static final Map<String, Set<String>> NEEDED = Map.of(
            "line", Set.of("x1", "y1", "x2", "y2"),
            "rect", Set.of("x", "y", "width", "height", "fill"),
            "circle", Set.of("cx", "cy", "r", "fill"),
            "polygon", Set.of("points", "fill"),
            "text", Set.of("x", "y", "font-size", "fill"));

    private static final Pattern VIEW = Pattern.compile("0 0 \\d+(\\.\\d+)? \\d+(\\.\\d+)?");
    private static final Pattern POINTS = Pattern.compile("\\d+(\\.\\d+)?pt");

    /** The drawing, or nothing if it is not a plain one. */
    public static Optional<PlainSvg> of(Element svg) {
        if (!isPlainFrame(svg)) {
            return Optional.empty();
        }
        List<Element> shapes = new ArrayList<>();
        for (Node node = svg.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && !element.getLocalName().equals("title")) {
                if (!isPlainShape(element)) {
                    return Optional.empty();
                }
                shapes.add(element);
            }
        }
        String[] view = svg.getAttribute("viewBox").split(" ");
        double width = Double.parseDouble(view[2]);
        double height = Double.parseDouble(view[3]);
        return width > 0 && height > 0 ? Optional.of(new PlainSvg(width, height, shapes)) : Optional.empty();
    }

    private static boolean isPlainFrame(Element svg) {
        NamedNodeMap attributes = svg.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            if (!OF_THE_WHOLE.contains(attributes.item(i).getNodeName())) {
                return false;
            }
        }
        return VIEW.matcher(svg.getAttribute("viewBox")).matches()
                && POINTS.matcher(svg.getAttribute("width")).matches()
                && POINTS.matcher(svg.getAttribute("height")).matches();
    }

    private static boolean isPlainShape(Element shape) {
        Set<String> allowed = ATTRIBUTES.getOrDefault(shape.getNodeName(), Set.of());
        NamedNodeMap attributes = shape.getAttributes();
        int needed = 0;
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.item(i).getNodeName();
            if (!allowed.contains(name)
                    || !VALUES.get(name)
                            .matcher(attributes.item(i).getNodeValue())
                            .matches()) {
                return false;
            }
            needed += NEEDED.get(shape.getNodeName()).contains(name) ? 1 : 0;
        }
        return !allowed.isEmpty() && needed == NEEDED.get(shape.getNodeName()).size() && holdsOnlyWords(shape);
    }

    private static boolean holdsOnlyWords(Element shape) {
        for (Node node = shape.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element) {
                return false;
            }
        }
        return true;
    }

    private static Map.Entry<String, Pattern> value(String attribute, String allowed) {
        return Map.entry(attribute, Pattern.compile(allowed));
    }
}
