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
import spadework.draft.Assumptions;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.field.NewRowValues;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.page.HousePlan.Spot;
import spadework.form.page.HousePlan.Stretch;
import spadework.form.session.JobSession;
import spadework.measure.Length;

/**
 * The plan as an input. Mouse: drag along the outline to dig there, drag the end of a wall to move it, click a side to
 * dig all of it. Keyboard: arrows move a mark along the outline, with control to the next corner or end; a length typed
 * and Enter digs so far from the mark.
 */
final class PlanCanvas extends JComponent {
    private static final int NEAR = 14;
    private static final int END = 9;
    private static final double ROOM = 13;

    private final JobSession session;
    private final Consumer<Integer> chosen;
    private PlanTool tool = PlanTool.WALL;
    private HousePlan plan = HousePlan.of(Draft.empty());
    private int selected = -1;
    private double mark;
    private String typed = "";
    private Optional<Drag> drag = Optional.empty();
    private Consumer<PlanTool> toolWatcher = now -> {};

    /** A stretch of a side that is being drawn; of a wall that is there, with its row. */
    private record Drag(int side, double from, double to, int row) {}

    /** @param chosen told which wall is chosen, by its row */
    PlanCanvas(JobSession session, Consumer<Integer> chosen) {
        this.session = session;
        this.chosen = chosen;
        setName("plan input");
        setFocusable(true);
        setPreferredSize(new Dimension(400, 330));
        setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
        getAccessibleContext().setAccessibleName(Messages.of("plan.input"));
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent event) {
                type(event.getKeyChar());
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
        KeyBindings.inside(this, "RIGHT", () -> move(1));
        KeyBindings.inside(this, "LEFT", () -> move(-1));
        KeyBindings.inside(this, "ctrl RIGHT", () -> jump(1));
        KeyBindings.inside(this, "ctrl LEFT", () -> jump(-1));
        KeyBindings.inside(this, "ENTER", this::take);
        KeyBindings.inside(this, "ESCAPE", () -> {
            typed = "";
            showDraft();
        });
        KeyBindings.inside(this, "DELETE", this::remove);
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

    /** Tells which tool is taken up. */
    void onTool(Consumer<PlanTool> watcher) {
        toolWatcher = watcher;
    }

    void use(PlanTool now) {
        tool = now;
        toolWatcher.accept(now);
        requestFocusInWindow();
        repaint();
    }

    /** The wall that is chosen, by its row. */
    int selected() {
        return selected;
    }

    private void choose(int row) {
        selected = row;
        chosen.accept(row);
        showDraft();
    }

    void showDraft() {
        Draft job = session.assumed().map(Assumptions::filled).orElse(session.draft());
        // What is typed counts before the office has answered to it.
        plan = HousePlan.of(session.assumed().isPresent() ? seen(job, session.draft()) : session.draft());
        if (selected >= session.draft().rows("/walls")) {
            selected = -1;
        }
        StringBuilder says = new StringBuilder();
        for (Stretch wall : plan.walls()) {
            says.append(Messages.of(
                    "plan.wall",
                    wall.label(),
                    HousePlan.SIDES.get(wall.side()),
                    Length.ofFeet(wall.from()).text(),
                    Length.ofFeet(wall.length()).text()));
        }
        int side = plan.side(mark);
        says.append(Messages.of(
                "plan.mark",
                HousePlan.SIDES.get(side),
                Length.ofFeet(plan.wrapped(mark) - plan.start(side)).text()));
        getAccessibleContext().setAccessibleDescription(says.toString());
        repaint();
    }

    private static Draft seen(Draft assumed, Draft written) {
        Draft made = assumed;
        for (String place : new String[] {"/walls", "/site/house/eastWest", "/site/house/northSouth"}) {
            if (!place.equals("/walls")) {
                made = written.shown(place).isEmpty() ? made : made.typed(place, written.shown(place));
            }
        }
        for (int i = 0; i < written.rows("/walls"); i++) {
            for (String key : new String[] {"/label", "/faces", "/from", "/length"}) {
                String place = Pointer.of("/walls", i) + key;
                String says = written.shown(place);
                made = i < made.rows("/walls") && !says.isEmpty() ? made.typed(place, says) : made;
            }
        }
        return made;
    }

    private void move(int feet) {
        int side = plan.side(mark);
        double next = plan.wrapped(mark) + feet;
        mark = plan.wrapped(Math.round(next * 2) / 2.0);
        if (plan.side(mark) != side) {
            mark = plan.start(feet > 0 ? plan.side(mark) : side);
        }
        plan.at(mark).ifPresent(wall -> choose(wall.row()));
        showDraft();
    }

    /** To the next corner of the house or end of a wall. */
    private void jump(int way) {
        double best = way > 0 ? plan.around() : -1;
        double at = plan.wrapped(mark);
        for (int side = 0; side < HousePlan.SIDES.size(); side++) {
            best = nearer(best, plan.start(side), at, way);
        }
        for (Stretch wall : plan.walls()) {
            best = nearer(best, plan.start(wall.side()) + wall.from(), at, way);
            best = nearer(best, plan.start(wall.side()) + wall.from() + wall.length(), at, way);
        }
        mark = plan.wrapped(best < 0 ? plan.start(HousePlan.SIDES.size() - 1) : best);
        showDraft();
    }

    private static double nearer(double best, double hold, double at, int way) {
        boolean ahead = way > 0 ? hold > at + 0.01 && hold < best : hold < at - 0.01 && hold > best;
        return ahead ? hold : best;
    }

    private void type(char key) {
        boolean measure = Character.isDigit(key) || (!typed.isEmpty() && " '\"./".indexOf(key) >= 0);
        if (measure) {
            typed += key;
            repaint();
        } else if (key == KeyEvent.VK_BACK_SPACE && !typed.isEmpty()) {
            typed = typed.substring(0, typed.length() - 1);
            repaint();
        } else {
            PlanTool.of(key).ifPresent(this::use);
        }
    }

    /** Digs as far from the mark as was typed; with nothing typed, does at the mark what a click would. */
    private void take() {
        Optional<Double> feet = HousePlan.typed(typed);
        int side = plan.side(mark);
        double from = plan.wrapped(mark) - plan.start(side);
        if (feet.isPresent() && tool == PlanTool.WALL) {
            dig(side, from, Math.min(plan.length(side), from + feet.get()));
            mark = plan.wrapped(mark + feet.get());
        } else if (feet.isPresent()) {
            act(plan.spot(side, from, feet.get()));
        } else {
            act(plan.spot(mark));
        }
        typed = "";
        showDraft();
    }

    private void remove() {
        if (selected >= 0) {
            session.edit(session.draft().without(Pointer.of("/walls", selected)));
            choose(-1);
        }
    }

    private void dig(int side, double from, double to) {
        if (Math.abs(to - from) >= 0.5) {
            Draft before = session.draft();
            Draft dug = HousePlan.dug(before, side, from, to);
            session.edit(dug);
            plan = HousePlan.of(dug);
            plan.walls().stream()
                    .filter(wall -> wall.side() == side && Math.abs(wall.from() - Math.min(from, to)) < 0.05)
                    .findFirst()
                    .ifPresent(wall -> choose(wall.row()));
        }
    }

    /** What a click does at a point of the plan. */
    private void act(Spot point) {
        double along = plan.nearest(point);
        Optional<Stretch> wall = plan.at(along);
        Draft draft = session.draft();
        switch (tool) {
            case WALL -> {
                int side = plan.side(along);
                if (wall.isPresent()) {
                    choose(wall.get().row());
                } else {
                    double on = plan.wrapped(along) - plan.start(side);
                    dig(side, free(side, on, -1), free(side, on, 1));
                }
            }
            case DRAIN -> wall.ifPresent(one -> session.edit(HousePlan.drained(draft, one.label())));
            case DOWNSPOUT -> session.edit(NewRowValues.added(draft, "/water/downspouts"));
            case TREE -> session.edit(plan.beside(draft, "tree", point));
            case LOT_LINE -> session.edit(plan.beside(draft, "property line", point));
            case OUTLET -> session.edit(plan.outlet(draft, point));
        }
        showDraft();
    }

    /** How far a side is free of walls from a place on. */
    private double free(int side, double on, int way) {
        double end = way > 0 ? plan.length(side) : 0;
        for (Stretch wall : plan.walls()) {
            double edge = way > 0 ? wall.from() : wall.from() + wall.length();
            boolean between = wall.side() == side && (way > 0 ? edge >= on && edge < end : edge <= on && edge > end);
            end = between ? edge : end;
        }
        return end;
    }

    private double scale() {
        return Math.min(getWidth() / (plan.eastWest() + 2 * ROOM), getHeight() / (plan.northSouth() + 2 * ROOM));
    }

    private Point2D onScreen(Spot spot) {
        double scale = scale();
        double left = (getWidth() - plan.eastWest() * scale) / 2;
        double top = (getHeight() - plan.northSouth() * scale) / 2;
        return new Point2D.Double(left + spot.x() * scale, top + spot.y() * scale);
    }

    private Spot onPlan(double x, double y) {
        double scale = scale();
        double left = (getWidth() - plan.eastWest() * scale) / 2;
        double top = (getHeight() - plan.northSouth() * scale) / 2;
        return new Spot((x - left) / scale, (y - top) / scale);
    }

    /** Where a place of the outline lies on the screen, for whoever points at it. */
    Point2D place(int side, double along) {
        return onScreen(plan.spot(side, along, 0));
    }

    private final class Hand extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            Spot point = onPlan(event.getX(), event.getY());
            double along = plan.nearest(point);
            int side = plan.side(along);
            if (tool != PlanTool.WALL || plan.distance(point) * scale() > NEAR) {
                drag = Optional.empty();
                return;
            }
            mark = along;
            double on = plan.wrapped(along) - plan.start(side);
            drag = Optional.of(end(side, on).orElseGet(() -> new Drag(side, plan.snapped(side, on), on, -1)));
        }

        /** The end of a wall, taken hold of: the other end stays. */
        private Optional<Drag> end(int side, double on) {
            for (Stretch wall : plan.walls()) {
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
                                : now.side() == 2 ? plan.eastWest() - point.x() : plan.northSouth() - point.y();
                double clamped = Math.max(0, Math.min(plan.length(now.side()), on));
                return new Drag(now.side(), now.from(), plan.snapped(now.side(), clamped), now.row());
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
                Drag one = done.get();
                session.edit(HousePlan.placed(
                        session.draft(),
                        one.row(),
                        one.side(),
                        Math.min(one.from(), one.to()),
                        Math.abs(one.to() - one.from())));
                choose(one.row());
            } else if (drawn) {
                dig(done.get().side(), done.get().from(), done.get().to());
            } else if (done.isPresent() || tool != PlanTool.WALL) {
                act(onPlan(event.getX(), event.getY()));
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

    HousePlan plan() {
        return plan;
    }

    Draft draft() {
        return session.draft();
    }

    PlanTool tool() {
        return tool;
    }

    String typed() {
        return typed;
    }

    double mark() {
        return mark;
    }

    /** The stretch that is being drawn, as a wall that is not there yet. */
    Optional<Stretch> drawn() {
        return drag.map(one -> new Stretch(
                one.row(), "", one.side(), Math.min(one.from(), one.to()), Math.abs(one.to() - one.from())));
    }

    Point2D point(Spot spot) {
        return onScreen(spot);
    }
}
