// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import java.util.stream.Collectors;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Area;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;

/** A drawing as an SVG 1.1 element that a page takes in as it stands. */
public final class SceneSvg {
    private static final double ARROW_LENGTH = 7;
    private static final double ARROW_HALF_WIDTH = 2.6;

    private SceneSvg() {}

    /** The element, without XML declaration. The same scene gives the same bytes. */
    public static String of(Scene scene) {
        String words = SvgText.escaped(scene.alternative());
        String width = SvgText.number(scene.width());
        String height = SvgText.number(scene.height());
        StringBuilder svg = new StringBuilder();
        // The PDF's figure takes its words from alt; a browser takes them from aria-label and title.
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" ");
        svg.append("aria-label=\"%s\" alt=\"%s\" ".formatted(words, words));
        svg.append("width=\"%spt\" height=\"%spt\" viewBox=\"0 0 %s %s\" font-family=\"Source Sans 3\">\n"
                .formatted(width, height, width, height));
        svg.append("<title>").append(words).append("</title>\n");
        for (Shape shape : scene.shapes()) {
            svg.append(element(shape)).append('\n');
        }
        return svg.append("</svg>").toString();
    }

    private static String element(Shape shape) {
        if (shape instanceof Line line) {
            return line(line);
        }
        if (shape instanceof Box box) {
            return "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"none\"%s/>"
                    .formatted(
                            SvgText.number(box.x()),
                            SvgText.number(box.y()),
                            SvgText.number(box.width()),
                            SvgText.number(box.height()),
                            stroke(box.weight(), box.role(), ""));
        }
        if (shape instanceof Dot dot) {
            String fill = dot.filled() ? SvgLineStyle.color(dot.role()) : "none";
            return "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\"%s/>"
                    .formatted(
                            SvgText.number(dot.x()),
                            SvgText.number(dot.y()),
                            SvgText.number(dot.radius()),
                            fill,
                            stroke(dot.weight(), dot.role(), ""));
        }
        if (shape instanceof Area area) {
            return "<polygon points=\"%s\" fill=\"%s\"%s/>"
                    .formatted(
                            area.corners().stream()
                                    .map(corner -> SvgText.number(corner.x()) + "," + SvgText.number(corner.y()))
                                    .collect(Collectors.joining(" ")),
                            SvgLineStyle.tint(area.role()),
                            stroke(area.weight(), area.role(), SvgLineStyle.dash(area.role())));
        }
        return label((Label) shape);
    }

    private static String line(Line line) {
        double length = Math.hypot(line.x2() - line.x1(), line.y2() - line.y1());
        if (!line.arrow() || length == 0) {
            return stroked(line, line.x2(), line.y2());
        }
        double dx = (line.x2() - line.x1()) / length;
        double dy = (line.y2() - line.y1()) / length;
        double baseX = line.x2() - ARROW_LENGTH * dx;
        double baseY = line.y2() - ARROW_LENGTH * dy;
        String head = "<polygon points=\"%s,%s %s,%s %s,%s\" fill=\"%s\"/>"
                .formatted(
                        SvgText.number(line.x2()),
                        SvgText.number(line.y2()),
                        SvgText.number(baseX - ARROW_HALF_WIDTH * dy),
                        SvgText.number(baseY + ARROW_HALF_WIDTH * dx),
                        SvgText.number(baseX + ARROW_HALF_WIDTH * dy),
                        SvgText.number(baseY - ARROW_HALF_WIDTH * dx),
                        SvgLineStyle.color(line.role()));
        return length <= ARROW_LENGTH ? head : stroked(line, baseX, baseY) + head;
    }

    private static String stroked(Line line, double x2, double y2) {
        return "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"%s/>"
                .formatted(
                        SvgText.number(line.x1()),
                        SvgText.number(line.y1()),
                        SvgText.number(x2),
                        SvgText.number(y2),
                        stroke(line.weight(), line.role(), SvgLineStyle.dash(line.role())));
    }

    private static String stroke(Shape.Weight weight, Role role, String dash) {
        return " stroke=\"%s\" stroke-width=\"%s\"%s"
                .formatted(
                        SvgLineStyle.color(role),
                        SvgText.number(SvgLineStyle.width(weight)),
                        dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
    }

    private static String label(Label label) {
        return "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\"%s fill=\"%s\">%s</text>"
                .formatted(
                        SvgText.number(label.x()),
                        SvgText.number(label.y()),
                        SvgText.number(label.size()),
                        SvgText.escaped(label.anchor()),
                        label.bold() ? " font-weight=\"bold\"" : "",
                        SvgLineStyle.color(label.role()),
                        SvgText.escaped(label.text()));
    }
}
