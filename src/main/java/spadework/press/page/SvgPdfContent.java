// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.util.Map;
import org.w3c.dom.Element;
import spadework.press.font.GlyphOutlines;
import spadework.press.svg.PlainSvg;
import spadework.press.svg.SvgText;

/** A plain drawing as the content of a PDF form, in the drawing's own units. Ink is named where it changes only. */
public final class SvgPdfContent {
    /** A quarter of a circle by one curve of the third degree: its handles at this part of the radius. */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private final Map<String, GlyphOutlines> letters;
    private final StringBuilder out = new StringBuilder(16 * 1024);
    private String fill = "";
    private String stroke = "";

    private SvgPdfContent(Map<String, GlyphOutlines> letters) {
        this.letters = letters;
    }

    /**
     * The content.
     *
     * @param letters the faces of words by font weight, {@code normal} and {@code bold}
     */
    static String of(PlainSvg drawing, Map<String, GlyphOutlines> letters) {
        SvgPdfContent strokes = new SvgPdfContent(letters);
        // A page counts from the foot, a drawing from the head. Ends, corners and miter limit are those of SVG.
        strokes.out
                .append("1 0 0 -1 0 ")
                .append(SvgText.number(drawing.height()))
                .append(" cm 0 J 0 j 4 M\n");
        drawing.shapes().forEach(strokes::shape);
        return strokes.out.toString();
    }

    private void shape(Element shape) {
        boolean filled =
                shape.hasAttribute("fill") && !shape.getAttribute("fill").equals("none");
        boolean stroked = shape.hasAttribute("stroke");
        if (filled) {
            fill(shape);
        }
        if (stroked) {
            stroke(shape);
        }
        if (shape.getNodeName().equals("text")) {
            if (filled) {
                words(shape);
            }
            return;
        }
        outline(shape);
        out.append(filled && stroked ? "B\n" : filled ? "f\n" : stroked ? "S\n" : "n\n");
    }

    private void outline(Element shape) {
        switch (shape.getNodeName()) {
            case "line" -> {
                copy(shape, "x1", "y1").append("m ");
                copy(shape, "x2", "y2").append("l ");
            }
            case "rect" -> copy(shape, "x", "y", "width", "height").append("re ");
            case "circle" -> circle(number(shape, "cx"), number(shape, "cy"), number(shape, "r"));
            default -> {
                String to = "m ";
                for (String corner : shape.getAttribute("points").split(" ")) {
                    out.append(corner.replace(',', ' ')).append(' ').append(to);
                    to = "l ";
                }
                out.append("h ");
            }
        }
    }

    private void circle(double x, double y, double r) {
        double k = r * QUARTER;
        numbers(x + r, y).append("m ");
        numbers(x + r, y + k, x + k, y + r, x, y + r).append("c ");
        numbers(x - k, y + r, x - r, y + k, x - r, y).append("c ");
        numbers(x - r, y - k, x - k, y - r, x, y - r).append("c ");
        numbers(x + k, y - r, x + r, y - k, x + r, y).append("c h ");
    }

    private void words(Element text) {
        GlyphOutlines face = letters.get(text.getAttribute("font-weight").equals("bold") ? "bold" : "normal");
        GlyphOutlines.Glyph[] line = text.getTextContent()
                .strip()
                .replaceAll("\\s+", " ")
                .codePoints()
                .mapToObj(face::of)
                .toArray(GlyphOutlines.Glyph[]::new);
        double scale = number(text, "font-size") / face.unitsPerEm();
        double length = 0;
        for (GlyphOutlines.Glyph letter : line) {
            length += letter.advance() * scale;
        }
        double before = switch (text.getAttribute("text-anchor")) {
            case "middle" -> length / 2;
            case "end" -> length;
            default -> 0;
        };
        String size = SvgText.fine(scale);
        out.append("q ").append(size).append(" 0 0 -").append(size).append(' ');
        numbers(number(text, "x") - before, number(text, "y")).append("cm\n");
        int gap = 0;
        for (GlyphOutlines.Glyph letter : line) {
            if (!letter.outline().isEmpty()) {
                if (gap > 0) {
                    out.append("1 0 0 1 ").append(gap).append(" 0 cm\n");
                }
                out.append(letter.outline());
                gap = 0;
            }
            gap += letter.advance();
        }
        out.append("Q\n");
    }

    private void fill(Element shape) {
        String wanted = shape.getAttribute("fill");
        if (!wanted.equals(fill)) {
            color(wanted).append("rg ");
            fill = wanted;
        }
    }

    private void stroke(Element shape) {
        String ink = shape.getAttribute("stroke");
        String width = shape.hasAttribute("stroke-width") ? shape.getAttribute("stroke-width") : "1";
        String dash = shape.getAttribute("stroke-dasharray");
        String wanted = ink + ' ' + width + ' ' + dash;
        if (!wanted.equals(stroke)) {
            color(ink).append("RG ").append(width).append(" w [").append(dash).append("] 0 d ");
            stroke = wanted;
        }
    }

    /** Red, green and blue, from 0 to 1. */
    private StringBuilder color(String hex) {
        for (int i = 1; i < hex.length(); i += 2) {
            out.append(SvgText.fine(Integer.parseInt(hex, i, i + 2, 16) / 255.0))
                    .append(' ');
        }
        return out;
    }

    private StringBuilder copy(Element shape, String... attributes) {
        for (String attribute : attributes) {
            out.append(shape.getAttribute(attribute)).append(' ');
        }
        return out;
    }

    private StringBuilder numbers(double... values) {
        for (double value : values) {
            out.append(SvgText.number(value)).append(' ');
        }
        return out;
    }

    private static double number(Element shape, String attribute) {
        return Double.parseDouble(shape.getAttribute(attribute));
    }
}
