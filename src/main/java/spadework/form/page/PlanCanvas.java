// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;
import spadework.drawing.plan.HouseGround;
import spadework.drawing.shape.Rect;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;
import spadework.form.page.HousePlan.Spot;
import spadework.form.page.HousePlan.Stretch;
import spadework.form.session.JobSession;
import spadework.office.Bid;

/**
 * The plan as an input. Mouse: drag along the outline to dig there, drag the end of a wall to move it, click a side to
 * dig all of it. Keyboard: arrows move a mark along the outline, with control to the next corner or end; a length typed
 * and Enter digs so far from the mark.
 */
final class PlanCanvas extends JComponent {
    private static final int WIDE = 400;
    private static final int HIGH = 340;

    /** Free above and below the line of words, in pixels. */
    private static final int BELOW = 10;

    private static final int NEAR = 14;
    private static final int END = 9;
    private static final double ROOM = 13;

    private final PlanInput input;
    private Optional<LaidOut> laidOut = Optional.empty();
    private Optional<Drag> drag = Optional.empty();

    /** A stretch of a side that is being drawn; of a wall that is there, with its row. */
    private record Drag(int side, double from, double to, int row) {}

    /** The ground of one answer of the office, at one size of the canvas. */
    private record LaidOut(Bid bid, Dimension size, HouseGround ground) {}

    /** @param chosen told which wall is chosen, by its row */
    PlanCanvas(JobSession session, Consumer<Integer> chosen) {
        input = new PlanInput(session, chosen, this::changed);
        setName("plan input");
        setFocusable(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
        getAccessibleContext().setAccessibleName(Messages.of("plan.input"));
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent event) {
                input.type(event.getKeyChar());
            }
        });
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
        KeyBindings.inside(this, "RIGHT", () -> input.move(1));
        KeyBindings.inside(this, "LEFT", () -> input.move(-1));
        KeyBindings.inside(this, "ctrl RIGHT", () -> input.jump(1));
        KeyBindings.inside(this, "ctrl LEFT", () -> input.jump(-1));
        KeyBindings.inside(this, "ENTER", input::take);
        KeyBindings.inside(this, "ESCAPE", input::cancel);
        KeyBindings.inside(this, "DELETE", input::remove);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        }
        return accessibleContext;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(WIDE, Theme.scaled(HIGH));
    }

    /** What is put in here. */
    PlanInput input() {
        return input;
    }

    /** Takes a tool up, and the keyboard with it. */
    void use(PlanTool tool) {
        input.use(tool);
        requestFocusInWindow();
    }

    private void changed() {
        getAccessibleContext().setAccessibleDescription(input.description());
        repaint();
    }

    private double scale() {
        return Math.min(
                getWidth() / (input.plan().eastWest() + 2 * ROOM),
                drawnHigh() / (input.plan().northSouth() + 2 * ROOM));
    }

    private Point2D onScreen(Spot spot) {
        double scale = scale();
        double left = (getWidth() - input.plan().eastWest() * scale) / 2;
        double top = (drawnHigh() - input.plan().northSouth() * scale) / 2;
        return new Point2D.Double(left + spot.x() * scale, top + spot.y() * scale);
    }

    private Spot onPlan(double x, double y) {
        double scale = scale();
        double left = (getWidth() - input.plan().eastWest() * scale) / 2;
        double top = (drawnHigh() - input.plan().northSouth() * scale) / 2;
        return new Spot((x - left) / scale, (y - top) / scale);
    }

    /** Where a place of the outline lies on the screen, for whoever points at it. */
    Point2D place(int side, double along) {
        return onScreen(input.plan().spot(side, along, 0));
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            Spot point = onPlan(event.getX(), event.getY());
            double along = input.plan().nearest(point);
            int side = input.plan().side(along);
            if (input.tool() != PlanTool.WALL || input.plan().distance(point) * scale() > NEAR) {
                drag = Optional.empty();
                return;
            }
            input.markAt(along);
            double on = input.plan().wrapped(along) - input.plan().start(side);
            drag = Optional.of(end(side, on)
                    .orElseGet(() -> new Drag(side, input.plan().snapped(side, on), on, -1)));
        }

        /** The end of a wall, taken hold of: the other end stays. */
        private Optional<Drag> end(int side, double on) {
            for (Stretch wall : input.plan().walls()) {
                double start = wall.from();
                double end = wall.from() + wall.length();
                if (wall.side() == side && Math.abs(end - on) * scale() < END) {
                    return Optional.of(new Drag(side, start, end, wall.row()));
                }
                if (wall.side() == side && Math.abs(start - on) * scale() < END) {
                    return Optional.of(new Drag(side, end, start, wall.row()));
                }
            }
            return Optional.empty();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            drag = drag.map(now -> {
                Spot point = onPlan(event.getX(), event.getY());
                double on = now.side() == 0
                        ? point.x()
                        : now.side() == 1
                                ? point.y()
                                : now.side() == 2
                                        ? input.plan().eastWest() - point.x()
                                        : input.plan().northSouth() - point.y();
                double clamped = Math.max(0, Math.min(input.plan().length(now.side()), on));
                return new Drag(now.side(), now.from(), input.plan().snapped(now.side(), clamped), now.row());
            });
            repaint();
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            Optional<Drag> done = drag;
            drag = Optional.empty();
            boolean drawn =
                    done.filter(one -> Math.abs(one.to() - one.from()) >= 1).isPresent();
            if (drawn && done.get().row() >= 0) {
                input.place(drawn(done.get()));
            } else if (drawn) {
                input.dig(done.get().side(), done.get().from(), done.get().to());
            } else if (done.isPresent() || input.tool() != PlanTool.WALL) {
                input.act(onPlan(event.getX(), event.getY()));
            }
            repaint();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        new PlanPainter(this, pen).paint();
        pen.dispose();
    }

    /** The stretch that is being drawn, as a wall that is not there yet. */
    Optional<Stretch> drawn() {
        return drag.map(PlanCanvas::drawn);
    }

    private static Stretch drawn(Drag drag) {
        return new Stretch(
                drag.row(), "", drag.side(), Math.min(drag.from(), drag.to()), Math.abs(drag.to() - drag.from()));
    }

    /** All ground that is dug, on the screen, from the last answer of the office. */
    @SuppressWarnings("ReferenceEquality") // the very same answer: nothing was figured since
    Optional<HouseGround> ground() {
        laidOut = input.bid()
                .map(bid -> laidOut.filter(
                                kept -> kept.bid() == bid && kept.size().equals(getSize()))
                        .orElseGet(() -> new LaidOut(bid, getSize(), bid.ground(house(), sheet()))));
        return laidOut.map(LaidOut::ground);
    }

    private Rect house() {
        Point2D corner = onScreen(new Spot(0, 0));
        Point2D other = onScreen(new Spot(input.plan().eastWest(), input.plan().northSouth()));
        return new Rect(corner.getX(), corner.getY(), other.getX(), other.getY());
    }

    private Rect sheet() {
        return new Rect(0, 0, getWidth(), drawnHigh());
    }

    /** How much of the height is drawn on; below it stands what the tool does. */
    int drawnHigh() {
        return getHeight() - getFontMetrics(UIManager.getFont("defaultFont")).getHeight() - BELOW;
    }

    Point2D point(Spot spot) {
        return onScreen(spot);
    }
}
