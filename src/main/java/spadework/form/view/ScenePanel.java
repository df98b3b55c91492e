// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JPanel;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;

/** A drawing on white, as large as the room allows. */
public final class ScenePanel extends JPanel {
    private static final Color WATER = new Color(0x1f4e5f);
    private static final Color GRAY = new Color(0x606060);
    private static final Color CUT = new Color(0xe2e2e2);
    private static final double HEAD = 7;
    private static final double HALF_HEAD = 2.6;

    private final String name;
    private Optional<Scene> scene = Optional.empty();

    ScenePanel(String name) {
        this.name = name;
        setBackground(Color.WHITE);
        setName(name);
        clear();
    }

    void show(Scene drawn) {
        scene = Optional.of(drawn);
        tell(drawn.alternative());
    }

    /** Shows nothing. */
    final void clear() {
        scene = Optional.empty();
        tell(Messages.of("picture.none"));
    }

    private void tell(String alternative) {
        AccessibleContext context = getAccessibleContext();
        context.setAccessibleName(Messages.of("picture." + name));
        context.setAccessibleDescription(alternative);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        scene.ifPresent(drawn -> {
            Graphics2D pen = (Graphics2D) graphics.create();
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            double scale = Math.min((getWidth() - 8) / drawn.width(), (getHeight() - 8) / drawn.height());
            pen.translate((getWidth() - scale * drawn.width()) / 2, (getHeight() - scale * drawn.height()) / 2);
            pen.scale(scale, scale);
            drawn.shapes().forEach(shape -> draw(pen, shape));
            pen.dispose();
        });
    }

    private static void draw(Graphics2D pen, Shape shape) {
        if (shape instanceof Shape.Line line) {
            line(pen, line);
        } else if (shape instanceof Shape.Box box) {
            stroke(pen, box.weight(), box.role());
            pen.draw(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
        } else if (shape instanceof Shape.Dot dot) {
            stroke(pen, dot.weight(), dot.role());
            Ellipse2D round = new Ellipse2D.Double(
                    dot.x() - dot.radius(), dot.y() - dot.radius(), 2 * dot.radius(), 2 * dot.radius());
            if (dot.filled()) {
                pen.fill(round);
            }
            pen.draw(round);
        } else if (shape instanceof Shape.Area area) {
            Path2D path = new Path2D.Double();
            for (Point corner : area.corners()) {
                if (path.getCurrentPoint() == null) {
                    path.moveTo(corner.x(), corner.y());
                } else {
                    path.lineTo(corner.x(), corner.y());
                }
            }
            path.closePath();
            if (area.role() == Role.WALL) {
                pen.setColor(CUT);
                pen.fill(path);
            }
            stroke(pen, area.weight(), area.role());
            pen.draw(path);
        } else if (shape instanceof Shape.Label label) {
            label(pen, label);
        }
    }

    private static void line(Graphics2D pen, Shape.Line line) {
        stroke(pen, line.weight(), line.role());
        double length = Math.hypot(line.x2() - line.x1(), line.y2() - line.y1());
        if (!line.arrow() || length == 0) {
            pen.draw(new Line2D.Double(line.x1(), line.y1(), line.x2(), line.y2()));
            return;
        }
        double dx = (line.x2() - line.x1()) / length;
        double dy = (line.y2() - line.y1()) / length;
        double x = line.x2() - HEAD * dx;
        double y = line.y2() - HEAD * dy;
        if (length > HEAD) {
            pen.draw(new Line2D.Double(line.x1(), line.y1(), x, y));
        }
        Path2D head = new Path2D.Double();
        head.moveTo(line.x2(), line.y2());
        head.lineTo(x - HALF_HEAD * dy, y + HALF_HEAD * dx);
        head.lineTo(x + HALF_HEAD * dy, y - HALF_HEAD * dx);
        head.closePath();
        pen.fill(head);
    }

    private static void label(Graphics2D pen, Shape.Label label) {
        pen.setColor(color(label.role()));
        pen.setFont(Theme.face(label.bold()).deriveFont(Font.PLAIN, (float) label.size()));
        double width = pen.getFontMetrics().getStringBounds(label.text(), pen).getWidth();
        double x = switch (label.anchor()) {
            case "middle" -> label.x() - width / 2;
            case "end" -> label.x() - width;
            default -> label.x();
        };
        pen.drawString(label.text(), (float) x, (float) label.y());
    }

    private static void stroke(Graphics2D pen, Weight weight, Role role) {
        float width = weight == Weight.THIN ? 0.6f : weight == Weight.MEDIUM ? 1.2f : 3.6f;
        float[] dash = switch (role) {
            case DRAIN -> new float[] {4, 2.4f};
            case LIMIT -> new float[] {11, 4};
            case FABRIC -> new float[] {5, 1.8f};
            case EXTRA_WALL -> new float[] {7, 3};
            case EXTRA_PIPE -> new float[] {1.2f, 2.2f};
            default -> null;
        };
        pen.setColor(color(role));
        pen.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
    }

    private static Color color(Role role) {
        return switch (role) {
            case DRAIN, MAIN, ROOF_LINE, EXTRA_PIPE, WATER -> WATER;
            case LIMIT, GROUND, SOIL, STONE -> GRAY;
            case HOUSE, WALL, EXTRA_WALL, FABRIC, COATING, SHIELD, DIMENSION, PLAIN -> Color.BLACK;
        };
    }
}
