// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import spadework.drawing.shape.Callout;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Hatching;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.ground.BodyKind;
import spadework.ground.DepthFrom;
import spadework.ground.DigBody;
import spadework.job.Protection;
import spadework.measure.Length;
import spadework.wording.Language;
import spadework.wording.Wording;

/**
 * A trench or a hole away from the walls, cut across at its deepest place, to scale: of a main, a roof line, a
 * discharge pipe, a basin or a test pit. Both banks are alike.
 */
public final class BodySketch {
    private static final Wording WORDS = Wording.beside(BodySketch.class);

    private static final double TITLE_SIZE = 11;
    private static final double GRADE = 64;
    private static final double LEFT = 90;
    private static final double NAMES = 150;
    private static final double WIDEST = 140;
    private static final double DEEPEST = 150;
    private static final double LARGEST = 28;
    private static final double OPEN_GROUND = 1.5;

    private final DigBody body;
    private final SectionWords words;
    private final double depth;
    private final double scale;
    private final double center;

    private BodySketch(DigBody body, SectionWords words) {
        this.body = body;
        this.words = words;
        depth = body.deepest().feet();
        double across = 2 * (half(depth) + OPEN_GROUND) + SectionFrame.SPOIL_BACK_FEET + SectionFrame.SPOIL_WIDE_FEET;
        scale = Math.min(
                Math.min(LARGEST, DEEPEST / depth), (SectionFrame.WIDTH - LEFT - NAMES - SectionFrame.EDGE) / across);
        center = LEFT + (OPEN_GROUND + half(depth)) * scale;
    }

    public static Scene of(DigBody body, Language language) {
        return new BodySketch(body, new SectionWords(language)).scene();
    }

    /** What it is called in a sentence, as {@code main M1}. */
    public static String name(DigBody body, Language language) {
        return new SectionWords(language).body(body);
    }

    /** Width at grade. */
    public static Length widthAtGrade(DigBody body) {
        double depth = body.deepest().feet();
        return Length.ofFeet(body.width() + 2 * body.out(depth));
    }

    /** Half its width that high over its bottom, feet. */
    private double half(double over) {
        double out = body.isLaidBack(depth) ? body.line().out(over) : 0;
        return body.width() / 2 + out;
    }

    private Point at(double out, double down) {
        return new Point(center + out * scale, GRADE + down * scale);
    }

    private Scene scene() {
        DrawingSheet sheet = new DrawingSheet();
        String title = LabelText.cut(
                WORDS.in(words.language()).get("body-sketch.section-at-deepest-place", words.body(body)),
                TITLE_SIZE,
                SectionFrame.WIDTH - 2 * SectionFrame.EDGE);
        sheet.draw(new Label(SectionFrame.EDGE, 13, title, "start", TITLE_SIZE, true, Role.WALL));
        ground(sheet);
        measures(sheet);
        double foot = Math.max(names(sheet), at(0, depth).y() + 30);
        sheet.wishes().forEach(oneOf -> SectionSketch.grant(oneOf, sheet));
        double legend = SectionLegend.draw(foot + 14, scale, words, sheet);
        return new Scene(SectionFrame.WIDTH, legend + 12, sheet.shapes(), inWords());
    }

    private void ground(DrawingSheet sheet) {
        double edge = half(depth);
        double heap = edge + SectionFrame.SPOIL_BACK_FEET;
        double wide = SectionFrame.SPOIL_WIDE_FEET;
        sheet.line(at(-edge - OPEN_GROUND, 0), at(-edge, 0), Weight.MEDIUM, Role.GROUND, false);
        sheet.line(at(edge, 0), at(heap + wide + OPEN_GROUND, 0), Weight.MEDIUM, Role.GROUND, false);
        List<Point> outline = new ArrayList<>(bank(-1));
        List<Point> right = bank(1);
        for (int i = right.size() - 1; i >= 0; i--) {
            outline.add(right.get(i));
        }
        Role role = body.depthFrom() == DepthFrom.USUAL ? Role.UNMEASURED : Role.GROUND;
        for (int i = 1; i < outline.size(); i++) {
            sheet.line(outline.get(i - 1), outline.get(i), Weight.MEDIUM, role, false);
        }
        Hatching.fill(outline, sheet);
        SectionGround.heap(
                List.of(
                        at(heap, 0),
                        at(heap + wide * 0.34, -wide * 0.3),
                        at(heap + wide * 0.62, -wide * 0.3),
                        at(heap + wide, 0)),
                sheet);
        if (body.bank().protection() == Protection.SHIELDED) {
            for (int side : new int[] {-1, 1}) {
                double x = at(side * half(0), 0).x() - side * 3.5;
                sheet.line(
                        new Point(x, GRADE - 6), new Point(x, at(0, depth).y() - 2), Weight.THICK, Role.SHIELD, false);
            }
        }
    }

    /** From grade down to the bottom, on one side. */
    private List<Point> bank(int side) {
        List<Point> points = new ArrayList<>(List.of(at(side * half(depth), 0)));
        List<Double> steps = body.line().steps();
        for (int i = steps.size() - 1; i >= 0 && body.isLaidBack(depth); i--) {
            double step = steps.get(i);
            points.add(at(side * half(step + 0.01), depth - step));
            points.add(at(side * half(step), depth - step));
        }
        points.add(at(side * half(0), depth));
        return points;
    }

    private void measures(DrawingSheet sheet) {
        double edge = half(depth);
        double foot = at(0, depth).y();
        double over = GRADE - 11;
        SectionMeasures.down(at(-edge, 0).x() - 14, GRADE, foot, body.deepest().text(), sheet);
        SectionMeasures.across(
                new Point(at(-edge, 0).x(), over),
                new Point(at(edge, 0).x(), over),
                GRADE,
                widthAtGrade(body).text(),
                -8,
                sheet);
        SectionMeasures.across(
                new Point(at(edge, 0).x(), over),
                new Point(at(edge + SectionFrame.SPOIL_BACK_FEET, 0).x(), over),
                GRADE,
                words.spoilBack(),
                -8,
                sheet);
        SectionMeasures.across(
                new Point(at(-half(0), 0).x(), foot + 11),
                new Point(at(half(0), 0).x(), foot + 11),
                foot,
                Length.ofFeet(body.width()).text(),
                8,
                sheet);
    }

    private double names(DrawingSheet sheet) {
        double middle = depth * 0.4;
        Callout bank = Callout.of(
                at(half(depth - middle), middle),
                WIDEST,
                words.bank(body.bank()),
                words.soil(body.bank()) + words.engineer(body.deepest()),
                words.from(body.depthFrom()));
        List<Line> leaders = new ArrayList<>();
        return bank.draw(SectionFrame.WIDTH - SectionFrame.EDGE - WIDEST, GRADE + 14, leaders, sheet);
    }

    private String inWords() {
        Wording said = WORDS.in(words.language());
        String name = words.body(body);
        StringJoiner text = new StringJoiner(" ");
        text.add(
                isHole()
                        ? said.get("body-sketch.section-through-hole", name)
                        : said.get("body-sketch.section-through-trench", name));
        text.add(said.get(
                "body-sketch.deep-and-wide-at",
                body.deepest().text(),
                words.from(body.depthFrom()),
                Length.ofFeet(body.width()).text()));
        text.add(said.get(
                "body-sketch.on-both-sides-at",
                words.bank(body.bank()),
                words.soil(body.bank()),
                words.engineer(body.deepest()),
                widthAtGrade(body).text()));
        text.add(said.get("body-sketch.soil-heaped", words.spoilBack()));
        return text.toString();
    }

    private boolean isHole() {
        return body.kind() == BodyKind.SUMP_PIT || body.kind() == BodyKind.TEST_PIT;
    }
}
