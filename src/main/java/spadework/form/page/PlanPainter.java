// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.UIManager;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.drawing.plan.HouseGround;
import spadework.drawing.plan.HouseGround.BrokenPipe;
import spadework.drawing.shape.BreakMark;
import spadework.drawing.shape.Point;
import spadework.form.kit.Messages;
import spadework.form.kit.Theme;
import spadework.form.page.HousePlan.Spot;
import spadework.form.page.HousePlan.Stretch;
import spadework.measure.Length;
import spadework.measure.UnreadableMeasure;

/** Draws what a plan canvas has: the house, its walls with their lengths, what lies beside them, and the mark. */
final class PlanPainter {
    private static final double BESIDE = 2.2;

    /** What lies further from its wall is drawn there, with a break mark, feet. */
    private static final double FURTHEST = 13;

    /** Half of a tree's circle, in pixels. */
    private static final int TREE = 8;

    /** How much of what lies below words is veiled, of 255. */
    private static final int VEIL = 190;

    /** Rows of words below an outlet before they are let lie over one another. */
    private static final int MOST_ROWS = 6;

    private final PlanCanvas canvas;
    private final HousePlan plan;
    private final Draft draft;
    private final Graphics2D pen;
    private final Color ink = UIManager.getColor("Label.foreground");
    private final Color faint = UIManager.getColor("Spadework.quiet");
    private final Color water = UIManager.getColor("Spadework.water");

    PlanPainter(PlanCanvas canvas, Graphics2D pen) {
        this.canvas = canvas;
        this.plan = canvas.input().plan();
        this.draft = canvas.input().draft();
        this.pen = pen;
    }

    void paint() {
        pen.setColor(UIManager.getColor("TextField.background"));
        pen.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
        pen.setColor(UIManager.getColor(canvas.isFocusOwner() ? "Spadework.water" : "Component.borderColor"));
        pen.drawRect(0, 0, canvas.getWidth() - 1, canvas.getHeight() - 1);
        Optional<HouseGround> ground = canvas.ground();
        house();
        ground.ifPresent(this::ground);
        plan.walls().forEach(this::wall);
        canvas.drawn().ifPresent(stretch -> line(stretch, water, 5));
        canvas.drawn().ifPresent(stretch -> dimension(stretch, true));
        drains();
        downspouts();
        besides();
        ground.ifPresentOrElse(this::outlets, this::outlet);
        if (canvas.isFocusOwner()) {
            mark();
        }
        pen.setFont(UIManager.getFont("defaultFont"));
        pen.setColor(faint);
        pen.drawString(Messages.of("plan.help." + canvas.input().tool().word()), 10, canvas.getHeight() - 10);
        north();
    }

    private void house() {
        Point2D corner = canvas.point(new Spot(0, 0));
        Point2D other = canvas.point(new Spot(plan.eastWest(), plan.northSouth()));
        Rectangle2D house = new Rectangle2D.Double(
                corner.getX(), corner.getY(), other.getX() - corner.getX(), other.getY() - corner.getY());
        pen.setColor(UIManager.getColor("Panel.background"));
        pen.fill(house);
        pen.setColor(ink);
        pen.setStroke(new BasicStroke(1.2f));
        pen.draw(house);
    }

    /** Lies open at grade, with the pipes in it; the very bodies that soil and price are made of. */
    private void ground(HouseGround ground) {
        Color soil = UIManager.getColor("Spadework.soil");
        pen.setColor(new Color(soil.getRed(), soil.getGreen(), soil.getBlue(), 50));
        pen.fill(ground.dug());
        pen.setColor(soil);
        pen.setStroke(new BasicStroke(1));
        pen.draw(ground.dug());
        pen.setColor(water);
        pen.setStroke(new BasicStroke(1.6f));
        for (List<Point> pipe : ground.pipes()) {
            for (int i = 1; i < pipe.size(); i++) {
                Point from = pipe.get(i - 1);
                Point to = pipe.get(i);
                pen.draw(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
            }
        }
        ground.broken().forEach(pipe -> broken(pipe.mark()));
    }

    /** Two strokes across a line that is not to scale: there the figure beside it holds. */
    private void broken(BreakMark mark) {
        pen.setColor(ink);
        pen.setStroke(new BasicStroke(1.6f));
        mark.strokes()
                .forEach(stroke -> pen.draw(new Line2D.Double(stroke.x1(), stroke.y1(), stroke.x2(), stroke.y2())));
    }

    private void wall(Stretch wall) {
        line(wall, wall.row() == canvas.input().selected() ? water : ink, 5);
        dimension(wall, wall.row() == canvas.input().selected());
        Point2D inside = canvas.point(plan.spot(wall.side(), wall.from() + wall.length() / 2, -BESIDE));
        pen.setFont(Theme.bold(14));
        centered(wall.label(), inside, wall.row() == canvas.input().selected() ? water : ink);
    }

    private void line(Stretch wall, Color color, float wide) {
        pen.setColor(color);
        pen.setStroke(new BasicStroke(wide, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        pen.draw(new Line2D.Double(
                canvas.point(plan.spot(wall.side(), wall.from(), 0)),
                canvas.point(plan.spot(wall.side(), wall.from() + wall.length(), 0))));
    }

    private void dimension(Stretch wall, boolean strong) {
        Point2D outside = canvas.point(plan.spot(wall.side(), wall.from() + wall.length() / 2, 2 * BESIDE));
        pen.setFont(UIManager.getFont("defaultFont"));
        String words = Length.ofFeet(wall.length()).text();
        // Beside a wall that runs up and down the words lie wholly outside.
        double aside = wall.side() % 2 == 0 ? 0 : pen.getFontMetrics().stringWidth(words) / 2.0;
        centered(
                words,
                new Point2D.Double(outside.getX() + (wall.side() == 1 ? aside : -aside), outside.getY()),
                strong ? water : ink);
    }

    private void drains() {
        pen.setColor(water);
        pen.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0));
        for (int i = 0; i < draft.rows("/water/drains"); i++) {
            List<String> along = List.of(
                    draft.shown(Pointer.of("/water/drains", i) + "/along").split(", "));
            for (Stretch wall : plan.walls()) {
                if (along.contains(wall.label())) {
                    pen.draw(new Line2D.Double(
                            canvas.point(plan.spot(wall.side(), wall.from(), BESIDE * 0.55)),
                            canvas.point(plan.spot(wall.side(), wall.from() + wall.length(), BESIDE * 0.55))));
                }
            }
        }
    }

    /** Downspouts whose place the file does not say are spread over the walls. */
    private void downspouts() {
        int all = draft.rows("/water/downspouts");
        for (int i = 0; i < all && !plan.walls().isEmpty(); i++) {
            Stretch wall = plan.walls().get(i % plan.walls().size());
            int here = i / plan.walls().size();
            Spot spread = plan.spot(
                    wall.side(),
                    wall.from()
                            + wall.length()
                                    * (1 + 2 * here)
                                    / (2.0 * (all / plan.walls().size() + 1)),
                    0);
            Point2D at = canvas.point(plan.downspout(draft, i).orElse(spread));
            pen.setColor(water);
            pen.fill(new Ellipse2D.Double(at.getX() - 5, at.getY() - 5, 10, 10));
        }
    }

    private void besides() {
        pen.setStroke(new BasicStroke(1.2f));
        for (int i = 0; i < draft.rows("/site/limits"); i++) {
            String row = Pointer.of("/site/limits", i);
            String label = draft.shown(row + "/wall");
            double out = feet(row + "/distance");
            int turn = i;
            plan.walls().stream()
                    .filter(wall -> wall.label().equals(label) && out > 0)
                    .findFirst()
                    .ifPresent(wall -> beside(wall, draft.shown(row + "/kind"), out, turn));
        }
    }

    private void beside(Stretch wall, String kind, double out, int turn) {
        double along = wall.from() + wall.length() * (0.25 + 0.25 * (turn % 3));
        Point2D far = canvas.point(plan.spot(wall.side(), along, Math.min(out, FURTHEST)));
        Point2D at = new Point2D.Double(far.getX(), Math.max(far.getY(), TREE));
        Point2D house = canvas.point(plan.spot(wall.side(), along, 0));
        pen.setColor(faint);
        if (out > FURTHEST) {
            double free = kind.equals("tree") ? 2 : 0;
            Point2D nearer = canvas.point(plan.spot(wall.side(), along, FURTHEST - free - 2));
            Point2D clear = canvas.point(plan.spot(wall.side(), along, FURTHEST - free));
            double lower = at.getY() - far.getY();
            pen.draw(new Line2D.Double(nearer.getX(), nearer.getY() + lower, at.getX(), at.getY()));
            broken(BreakMark.between(
                    new Point(nearer.getX(), nearer.getY() + lower), new Point(clear.getX(), clear.getY() + lower)));
            pen.setColor(faint);
            pen.setStroke(new BasicStroke(1.2f));
        }
        if (kind.equals("tree")) {
            Ellipse2D tree = new Ellipse2D.Double(at.getX() - TREE, at.getY() - TREE, 2 * TREE, 2 * TREE);
            pen.setColor(UIManager.getColor("TextField.background"));
            pen.fill(tree);
            pen.setColor(faint);
            pen.draw(tree);
        } else {
            pen.draw(new Line2D.Double(
                    canvas.point(plan.spot(wall.side(), wall.from(), Math.min(out, FURTHEST))),
                    canvas.point(plan.spot(wall.side(), wall.from() + wall.length(), Math.min(out, FURTHEST)))));
        }
        pen.setFont(UIManager.getFont("defaultFont"));
        String words = Messages.of(
                "plan.beside",
                Messages.or("choice." + kind, kind),
                Length.ofFeet(out).text());
        centered(words, outside(at, house, pen.getFontMetrics().stringWidth(words)), faint);
    }

    /** The middle of words that stand beyond a mark, seen from the house; beside it where the picture ends. */
    private Point2D outside(Point2D at, Point2D house, double width) {
        double away = at.getX() - house.getX();
        double beside = at.getX() + (away < 0 ? -1 : 1) * (width / 2 + TREE + 4);
        boolean isSideways = Math.abs(away) > Math.abs(at.getY() - house.getY());
        if (isSideways && beside - width / 2 >= 0 && beside + width / 2 <= canvas.getWidth()) {
            return new Point2D.Double(beside, at.getY());
        }
        double above = at.getY() - 2 * TREE - 2;
        return above < TREE
                ? new Point2D.Double(at.getX() + TREE + 4 + width / 2, at.getY())
                : new Point2D.Double(at.getX(), above);
    }

    private void outlets(HouseGround ground) {
        List<Rectangle2D> taken = new ArrayList<>();
        ground.outlets().values().forEach(at -> taken.add(new Rectangle2D.Double(at.x() - 4, at.y() - 4, 8, 8)));
        pen.setFont(UIManager.getFont("defaultFont"));
        ground.broken().forEach(pipe -> taken.add(around(pipe.mark())));
        for (BrokenPipe pipe : ground.broken()) {
            Rectangle2D room = room(pipe.mark().before(), pipe.text(), taken);
            taken.add(room);
            centered(pipe.text(), new Point2D.Double(room.getCenterX(), room.getCenterY()), water);
        }
        for (int i = 0; i < draft.rows("/water/outlets"); i++) {
            String row = Pointer.of("/water/outlets", i);
            String label = draft.shown(row + "/label");
            Point at = ground.outlets().get(label);
            if (at != null) {
                double out = feet(row + "/fromHouse");
                pen.setColor(water);
                pen.setStroke(new BasicStroke(1.6f));
                pen.draw(new Rectangle2D.Double(at.x() - 4, at.y() - 4, 8, 8));
                pen.setFont(UIManager.getFont("defaultFont"));
                String words = Messages.of(
                        out > 0 ? "plan.outlet" : "plan.outlet.unknown",
                        label,
                        Length.ofFeet(out).text());
                Rectangle2D room = room(at, words, taken);
                taken.add(room);
                centered(words, new Point2D.Double(room.getCenterX(), room.getCenterY()), water);
            }
        }
    }

    private static Rectangle2D around(BreakMark mark) {
        Rectangle2D around =
                new Rectangle2D.Double(mark.before().x(), mark.before().y(), 0, 0);
        mark.strokes().forEach(stroke -> {
            around.add(stroke.x1(), stroke.y1());
            around.add(stroke.x2(), stroke.y2());
        });
        return around;
    }

    /** Beside an outlet, right or left of it, or lower where words and other outlets are in the way. */
    private Rectangle2D room(Point at, String words, List<Rectangle2D> taken) {
        FontMetrics letters = pen.getFontMetrics();
        double width = letters.stringWidth(words);
        double height = letters.getHeight() + 4;
        for (int lower = 0; lower < MOST_ROWS; lower++) {
            for (double left : new double[] {at.x() + 8, at.x() - 8 - width}) {
                Rectangle2D room = new Rectangle2D.Double(left, at.y() - height / 2 + lower * height, width, height);
                boolean shown = left >= 0 && left + width <= canvas.getWidth() && room.getMaxY() <= canvas.drawnHigh();
                if (shown && taken.stream().noneMatch(room::intersects)) {
                    return room;
                }
            }
        }
        return new Rectangle2D.Double(at.x() + 8, at.y() - height / 2, width, height);
    }

    /** Before the office has answered nobody knows where it lies; it stands at a corner. */
    private void outlet() {
        if (draft.rows("/water/outlets") > 0) {
            double out = feet("/water/outlets/0/fromHouse");
            Point2D at = canvas.point(new Spot(plan.eastWest() + 10, plan.northSouth() + 6));
            pen.setColor(water);
            pen.setStroke(new BasicStroke(1.6f));
            pen.draw(new Line2D.Double(canvas.point(new Spot(plan.eastWest(), plan.northSouth())), at));
            pen.setFont(UIManager.getFont("defaultFont"));
            centered(
                    Messages.of(
                            out > 0 ? "plan.outlet" : "plan.outlet.unknown",
                            draft.shown("/water/outlets/0/label"),
                            Length.ofFeet(out).text()),
                    new Point2D.Double(at.getX(), at.getY() + 10),
                    water);
        }
    }

    private double feet(String place) {
        try {
            return Length.parse(draft.shown(place)).feet();
        } catch (UnreadableMeasure unreadable) {
            return 0;
        }
    }

    private void mark() {
        Point2D at = canvas.point(plan.spot(canvas.input().mark()));
        pen.setColor(water);
        pen.setStroke(new BasicStroke(2));
        pen.draw(new Ellipse2D.Double(at.getX() - 7, at.getY() - 7, 14, 14));
        if (!canvas.input().typed().isEmpty()) {
            pen.setFont(Theme.bold(16));
            centered(canvas.input().typed() + "|", new Point2D.Double(at.getX(), at.getY() - 16), water);
        }
    }

    private void north() {
        int x = canvas.getWidth() - 22;
        pen.setColor(ink);
        pen.setStroke(new BasicStroke(1.4f));
        pen.draw(new Line2D.Double(x, 40, x, 16));
        pen.draw(new Line2D.Double(x, 16, x - 4, 23));
        pen.draw(new Line2D.Double(x, 16, x + 4, 23));
        pen.setFont(Theme.bold(13));
        centered(Messages.of("plan.north"), new Point2D.Double(x, 50), ink);
    }

    private void centered(String words, Point2D at, Color color) {
        FontMetrics size = pen.getFontMetrics();
        Color ground = UIManager.getColor("TextField.background");
        pen.setColor(new Color(ground.getRed(), ground.getGreen(), ground.getBlue(), VEIL));
        pen.fill(new Rectangle2D.Double(
                at.getX() - size.stringWidth(words) / 2.0 - 1,
                at.getY() - size.getAscent() / 2.0,
                size.stringWidth(words) + 2.0,
                size.getAscent()));
        pen.setColor(color);
        pen.drawString(words, (float) (at.getX() - size.stringWidth(words) / 2.0), (float)
                (at.getY() + size.getAscent() / 2.0 - 1));
    }
}
