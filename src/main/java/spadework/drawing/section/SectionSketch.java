// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelPlacer;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Role;
import spadework.job.SiteLimit;
import spadework.takeoff.CrossSection;
import spadework.wording.Language;

/**
 * The trench cut across at a wall, to scale, about 470 by 300 points: the house on the left, the bank on the right,
 * and what comes between. It grows downward when the names need room.
 */
public final class SectionSketch {
    private static final double TITLE_SIZE = 11;
    private static final double FOOT = 26;

    private SectionSketch() {}

    /**
     * Draws a section with what covers its wall.
     *
     * @param language of its words
     */
    public static Scene of(CrossSection section, WallCovering covering, Language language) {
        SectionWords words = new SectionWords(language);
        SectionFrame frame = SectionFrame.of(section);
        DrawingSheet sheet = new DrawingSheet();
        sheet.draw(title(section, words));
        SectionHouse.draw(frame, sheet);
        SectionGround.draw(frame, sheet);
        section.bed().ifPresent(bed -> SectionDrain.draw(frame, bed, sheet));
        SectionMeasures.draw(frame, words, sheet);
        names(frame, words, sheet);
        double end = Math.max(new SectionLabels(frame, words).draw(covering, sheet), frame.foot() + 30);
        // Measures and short names give way: a line to a name has fewer ways to go.
        sheet.wishes().forEach(oneOf -> grant(oneOf, sheet));
        double lowest = sheet.shapes().stream()
                .filter(Label.class::isInstance)
                .mapToDouble(shape -> LabelText.box((Label) shape).bottom())
                .max()
                .orElse(end);
        double foot = Math.max(end, lowest + 5);
        double legend = SectionLegend.draw(foot + 14, frame.scale(), words, sheet);
        String said = new SectionInWords(words).of(section, covering);
        return new Scene(SectionFrame.WIDTH, legend - 14 + FOOT, sheet.shapes(), said);
    }

    private static Label title(CrossSection section, SectionWords words) {
        double widest = SectionFrame.WIDTH - 2 * SectionFrame.EDGE;
        String text = LabelText.cut(words.title(section.walls()), TITLE_SIZE, true, widest);
        return new Label(SectionFrame.EDGE, 13, text, "start", TITLE_SIZE, true, Role.WALL);
    }

    private static void names(SectionFrame frame, SectionWords words, DrawingSheet sheet) {
        Rect zone = new Rect(3, 20, SectionFrame.WIDTH - 3, Double.MAX_VALUE);
        double edge = frame.section().reach().feet() + SectionFrame.SPOIL_BACK_FEET;
        String spoil = frame.section().noSoilOn().isPresent() ? words.noSpoil() : words.spoil();
        Point overHeap = frame.at(edge + SectionFrame.SPOIL_WIDE_FEET / 2, -SectionFrame.SPOIL_WIDE_FEET * 0.3)
                .plus(0, -9);
        sheet.wish(name(spoil, overHeap, zone));
        for (SiteLimit limit : frame.section().beside()) {
            frame.markOf(limit).ifPresent(foot -> {
                LabelRequest request = name(words.beside(limit), foot.plus(0, -28), zone);
                sheet.wish(List.of(request, request.withLeader(foot.plus(0, -16), zone, 140)));
            });
        }
        Point grade = frame.at(-SectionFrame.WALL_FEET, 0);
        double half = LabelText.width(words.grade(), LabelRequest.SMALL) / 2;
        sheet.wish(name(words.grade(), grade.plus(-half - 5, -8), zone));
    }

    private static LabelRequest name(String text, Point target, Rect zone) {
        return new LabelRequest(
                text,
                LabelRequest.SMALL,
                false,
                Role.PLAIN,
                "middle",
                new LabelSpot(target, zone, 110),
                Optional.empty(),
                "",
                false);
    }

    static void grant(List<LabelRequest> oneOf, DrawingSheet sheet) {
        oneOf.stream()
                .map(wish -> LabelPlacer.place(wish, sheet.shapes()))
                .filter(shapes -> !shapes.isEmpty())
                .findFirst()
                .ifPresent(shapes -> shapes.forEach(sheet::draw));
    }
}
