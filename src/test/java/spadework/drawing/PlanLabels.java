// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Area;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;

/** What lies over what on a drawing, worked out by a geometry library and not by the drawing's own code. */
public final class PlanLabels {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private PlanLabels() {}

    public static List<Label> of(Scene scene) {
        return scene.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    public static List<String> texts(Scene scene) {
        return of(scene).stream().map(Label::text).toList();
    }

    /** Every label that lies over another, over a line or symbol, or beyond the sheet; one sentence each. */
    public static List<String> faults(Scene scene) {
        List<Label> labels = of(scene);
        Geometry sheet = GEOMETRY.toGeometry(new Envelope(0, scene.width(), 0, scene.height()));
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            Geometry box = box(labels.get(i));
            if (!sheet.contains(box)) {
                faults.add(labels.get(i).text() + " leaves the sheet");
            }
            for (Label other : labels.subList(i + 1, labels.size())) {
                if (box.intersects(box(other))) {
                    faults.add(labels.get(i).text() + " lies over " + other.text());
                }
            }
            for (Shape shape : scene.shapes()) {
                if (!(shape instanceof Label) && box.intersects(drawn(shape))) {
                    faults.add(labels.get(i).text() + " lies over " + shape);
                }
            }
        }
        return faults;
    }

    /** From the ascent of an upper-case letter to the descent of a lower-case one. */
    private static Geometry box(Label label) {
        double width = PrintedFace.width(label.text(), label.size(), label.bold());
        double left = label.x();
        if (label.anchor().equals("middle")) {
            left -= width / 2;
        } else if (label.anchor().equals("end")) {
            left -= width;
        }
        return GEOMETRY.toGeometry(
                new Envelope(left, left + width, label.y() - 0.7 * label.size(), label.y() + 0.22 * label.size()));
    }

    private static Geometry drawn(Shape shape) {
        if (shape instanceof Line line) {
            return GEOMETRY.createLineString(
                    new Coordinate[] {new Coordinate(line.x1(), line.y1()), new Coordinate(line.x2(), line.y2())});
        }
        if (shape instanceof Dot dot) {
            return GEOMETRY.createPoint(new Coordinate(dot.x(), dot.y())).buffer(dot.radius());
        }
        if (shape instanceof Area area) {
            List<Coordinate> ring = new ArrayList<>(area.corners().stream()
                    .map(corner -> new Coordinate(corner.x(), corner.y()))
                    .toList());
            ring.add(ring.get(0));
            return GEOMETRY.createLineString(ring.toArray(Coordinate[]::new));
        }
        Box box = (Box) shape;
        Envelope outline = new Envelope(box.x(), box.x() + box.width(), box.y(), box.y() + box.height());
        return GEOMETRY.toGeometry(outline).getBoundary();
    }
}
