// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelPlacer;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Alteration;
import spadework.job.Job;
import spadework.job.Option;
import spadework.wording.Language;

/**
 * The plan of the house seen from above, north up: the dug walls, all ground that is opened, the pipes and where the
 * water goes. About 470 by
 * 250 points; it grows downward when the key below it needs room.
 */
public final class PlanSketch {
    private PlanSketch() {}

    /** Draws a job in English, as the office reads it. */
    public static Scene of(Job job) {
        return of(job, Language.ENGLISH);
    }

    /**
     * Draws a job.
     *
     * @param language of its words
     * @throws IllegalArgumentException if a drain or a site limit names a wall that the job does not have; intake has
     *     checked that
     */
    public static Scene of(Job job, Language language) {
        return of(job, AddedParts.NONE, PlanSize.AMONG_OTHERS, language);
    }

    /** Draws a job so large that the plan fills a page that lies on its side: for a house with many walls to dig. */
    public static Scene onItsOwnPage(Job job, Language language) {
        return of(job, AddedParts.NONE, PlanSize.WHOLE_PAGE, language);
    }

    /** Draws a job across an upright page, so that a list of many walls goes below. */
    public static Scene acrossThePage(Job job, Language language) {
        return of(job, AddedParts.NONE, PlanSize.ACROSS_PAGE, language);
    }

    /** Draws a job and, dashed, the walls and pipes that its options would add. */
    public static Scene withOptions(Job job, Language language) {
        List<Alteration> options =
                job.agreement().options().stream().map(Option::alteration).toList();
        Job whole = AddedParts.with(job, options);
        AddedParts extra = AddedParts.optional(job, whole, new PlanWords(language));
        return extra.labels().isEmpty() ? of(job, language) : of(whole, extra, PlanSize.AMONG_OTHERS, language);
    }

    /** Draws the job that comes of a change, the walls and pipes that it adds dashed. */
    public static Scene changed(Job before, Job after, Language language) {
        AddedParts extra = AddedParts.added(before, after, new PlanWords(language));
        return of(after, extra, PlanSize.AMONG_OTHERS, language);
    }

    private static Scene of(Job job, AddedParts extra, PlanSize usual, Language language) {
        PlanWords words = new PlanWords(language);
        PlanLayout layout = PlanLayout.aboveFoot(job, usual, words);
        PipeLayout water = layout.water();
        PlanFrame frame = layout.frame();
        PlanBands bands = layout.bands();
        DrawingSheet sheet = new DrawingSheet();
        DugGround dug = DugGround.of(job, water, extra, layout.outlets(), frame, bands);
        dug.outline(sheet);
        WallDrawing.draw(job, extra, frame, bands, sheet);
        OutletDrawing.draw(job, water, layout.outlets(), frame, words, sheet);
        DrainDrawing.draw(water, extra, frame, bands, words, sheet);
        RunDrawing.draw(layout.ways(), extra, sheet);
        RunDrawing.names(layout.ways(), words, sheet);
        LimitDrawing.draw(layout.around(), frame, bands, words, sheet);
        FrontDrawing.draw(job, frame, words, sheet);
        WallLabels.of(job, frame, sheet.shapes()).forEach(sheet::wish);
        List<String> key = placeNames(sheet);
        dug.unplaced().forEach(pit -> key.add(words.unplacedPit(pit)));
        dug.hatch(sheet);
        double height = new PlanFoot(frame, words, sheet).draw(job, layout, extra, key);
        return new Scene(usual.width(), height, sheet.shapes(), new PlanInWords(job, words).of(extra));
    }

    /** Gives every name its place, those that matter most first, and answers what the key must say. */
    private static List<String> placeNames(DrawingSheet sheet) {
        List<List<LabelRequest>> wishes = new ArrayList<>(sheet.wishes());
        wishes.sort(Comparator.comparingInt(oneOf -> rank(oneOf.get(0).role())));
        List<String> key = new ArrayList<>();
        for (List<LabelRequest> oneOf : wishes) {
            Optional<LabelRequest> granted =
                    oneOf.stream().filter(wish -> isGranted(wish, sheet)).findFirst();
            LabelRequest last = granted.orElse(oneOf.get(oneOf.size() - 1));
            boolean missing = granted.isEmpty() || last.explained();
            if (missing && key.stream().noneMatch(entry -> entry.endsWith(last.inKey()))) {
                key.add(last.inKey());
            }
        }
        return key;
    }

    /** Draws the words if there is room for them. */
    private static boolean isGranted(LabelRequest wish, DrawingSheet sheet) {
        List<Shape> placed = LabelPlacer.place(wish, sheet.shapes());
        placed.forEach(sheet::draw);
        return !placed.isEmpty();
    }

    private static int rank(Role role) {
        return switch (role) {
            case WALL -> 0;
            case DIMENSION -> 1;
            case WATER -> 2;
            case LIMIT -> 3;
            default -> 4;
        };
    }
}
