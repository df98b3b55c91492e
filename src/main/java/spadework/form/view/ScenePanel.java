// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
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
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;

/**
 * A drawing on white, as large as the room allows. The wheel, plus and minus zoom; dragging and the arrows move it; a
 * double click or 0 shows all of it again.
 */
public final class ScenePanel extends JPanel {
    private static final Color WATER = new Color(0x1f4e5f);
    private static final Color GRAY = new Color(0x606060);
    private static final Color OPEN_GROUND = new Color(0x9a9a9a);
    private static final Color CUT = new Color(0xe2e2e2);
    private static final double HEAD = 7;
    private static final double HALF_HEAD = 2.6;

    private static final double STEP = 1.25;
    private static final double MOST = 12;
    private static final int MARGIN = 4;
    private static final int STRIDE = 40;

    private final String name;
    private Optional<Scene> scene = Optional.empty();
    private double zoom = 1;
    /** How far the middle of the drawing lies from the middle of the panel, in pixels. */
    private double right;

    private double down;
    private java.awt.Point grip = new java.awt.Point();

    ScenePanel(String name) {
        this.name = name;
        setBackground(Color.WHITE);
        setName(name);
        setFocusable(true);
        setToolTipText(Messages.of("drawing.zoom.help"));
        clear();
        MouseAdapter hand = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                grip = event.getPoint();
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                shift(event.getX() - grip.x, event.getY() - grip.y);
                grip = event.getPoint();
            }

            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    fit();
                }
            }

            @Override
            public void mouseWheelMoved(MouseWheelEvent event) {
                zoom(Math.pow(STEP, -event.getPreciseWheelRotation()), event.getX(), event.getY());
            }
        };
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addMouseWheelListener(hand);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        key("PLUS", () -> closer(STEP));
        key("EQUALS", () -> closer(STEP));
        key("ADD", () -> closer(STEP));
        key("MINUS", () -> closer(1 / STEP));
        key("SUBTRACT", () -> closer(1 / STEP));
        key("0", this::fit);
        key("LEFT", () -> shift(STRIDE, 0));
        key("RIGHT", () -> shift(-STRIDE, 0));
        key("UP", () -> shift(0, STRIDE));
        key("DOWN", () -> shift(0, -STRIDE));
    }

    private void key(String stroke, Runnable act) {
        KeyBindings.inside(this, stroke, act);
    }

    /** Zooms about the middle. */
    void closer(double times) {
        zoom(times, getWidth() / 2.0, getHeight() / 2.0);
    }

    /** Shows all of it. */
    final void fit() {
        zoom = 1;
        right = 0;
        down = 0;
        repaint();
    }

    /** How much larger it is shown than all of it would be. */
    public double zoomed() {
        return zoom;
    }

    /** What lies under a point stays there. */
    private void zoom(double times, double x, double y) {
        double to = Math.max(1, Math.min(MOST, zoom * times));
        double by = to / zoom;
        right = (right - (x - getWidth() / 2.0)) * by + x - getWidth() / 2.0;
        down = (down - (y - getHeight() / 2.0)) * by + y - getHeight() / 2.0;
        zoom = to;
        shift(0, 0);
    }

    /** Moves the drawing, no further than its edges. */
    private void shift(double byX, double byY) {
        double wide = scene.map(Scene::width).orElse(1.0) * scale() - getWidth();
        double high = scene.map(Scene::height).orElse(1.0) * scale() - getHeight();
        right = bounded(right + byX, Math.max(0, wide / 2 + MARGIN));
        down = bounded(down + byY, Math.max(0, high / 2 + MARGIN));
        repaint();
    }

    private static double bounded(double value, double most) {
        return Math.max(-most, Math.min(most, value));
    }

    private double scale() {
        return zoom
                * scene.map(drawn -> Math.min(
                                (getWidth() - 2 * MARGIN) / drawn.width(), (getHeight() - 2 * MARGIN) / drawn.height()))
                        .orElse(1.0);
    }

    /** What it is called. */
    String title() {
        return Messages.of("picture." + name);
    }

    void show(Scene drawn) {
        scene = Optional.of(drawn);
        tell(drawn.alternative());
        shift(0, 0);
    }

    /** Shows nothing. */
    final void clear() {
        scene = Optional.empty();
        tell(Messages.of("picture.none"));
    }

    private void tell(String alternative) {
        AccessibleContext context = getAccessibleContext();
        context.setAccessibleName(title());
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
            // Whole pixels would swallow the space between words, which is a fifth of the letters' size.
            pen.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            double scale = scale();
            pen.translate(
                    (getWidth() - scale * drawn.width()) / 2 + right,
                    (getHeight() - scale * drawn.height()) / 2 + down);
            pen.scale(scale, scale);
            drawn.shapes().forEach(shape -> draw(pen, shape));
            pen.dispose();
            if (isFocusOwner()) {
                graphics.setColor(WATER);
                graphics.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            }
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
            if (area.role() == Role.WALL || area.role() == Role.UNMEASURED) {
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
            case ROOF_LINE -> new float[] {8, 1.8f, 1.4f, 1.8f};
            case LIMIT -> new float[] {11, 4};
            case FABRIC -> new float[] {5, 1.8f};
            case EXTRA_WALL -> new float[] {7, 3};
            case EXTRA_PIPE -> new float[] {1.2f, 2.2f};
            case EXTRA_DUG -> new float[] {2.4f, 2.4f};
            case UNMEASURED -> new float[] {1.2f, 1.8f};
            default -> null;
        };
        pen.setColor(color(role));
        pen.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
    }

    private static Color color(Role role) {
        return switch (role) {
            case DRAIN, MAIN, ROOF_LINE, EXTRA_PIPE, WATER -> WATER;
            case LIMIT, GROUND, SOIL, STONE -> GRAY;
            case DUG, EXTRA_DUG -> OPEN_GROUND;
            case HOUSE, WALL, EXTRA_WALL, FABRIC, COATING, SHIELD, UNMEASURED, DIMENSION, BREAK, PLAIN -> Color.BLACK;
        };
    }
}
