package spadework.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.drawing.Shape.Role;
import spadework.job.Alteration;
import spadework.job.Job;
import spadework.job.Option;

/**
 * The plan of the house seen from above, north up: the dug walls, the pipes and where the water goes. About 470 by
 * 250 points; it grows downward when the key below it needs room.
 */
public final class PlanSketch {
    private PlanSketch() {}

    /**
     * Draws a job.
     *
     * @throws IllegalArgumentException if a drain or a site limit names a wall that the job does not have; intake has
     *     checked that
     */
    public static Scene of(Job job) {
        return of(job, Extra.NONE);
    }

    /** Draws a job and, dashed, the walls and pipes that its options would add. */
    public static Scene withOptions(Job job) {
        List<Alteration> options =
                job.agreement().options().stream().map(Option::alteration).toList();
        Job whole = Extra.with(job, options);
        Extra extra = Extra.optional(job, whole);
        return extra.labels().isEmpty() ? of(job) : of(whole, extra);
    }

    /** Draws the job that comes of a change, the walls and pipes that it adds dashed. */
    public static Scene changed(Job before, Job after) {
        return of(after, Extra.added(before, after));
    }

    private static Scene of(Job job, Extra extra) {
        Waterways water = Waterways.of(job);
        Surroundings around = Surroundings.of(job);
        Bands bands = Bands.of(job, water, around);
        Frame frame = Frame.of(job, bands);
        Map<String, Point> outlets = OutletDrawing.places(job, water, frame, bands);
        Sheet sheet = new Sheet();
        WallDrawing.draw(job, extra, frame, bands, sheet);
        OutletDrawing.draw(job, water, outlets, frame, sheet);
        DrainDrawing.draw(water, extra, frame, bands, sheet);
        RunDrawing.draw(water, extra, outlets, frame, bands, sheet);
        LimitDrawing.draw(around, frame, bands, sheet);
        WallNames.of(job, frame, sheet.shapes()).forEach(sheet::wish);
        List<String> key = placeNames(sheet);
        double height = PlanFoot.draw(job, extra, key, frame, sheet);
        return new Scene(Frame.WIDTH, height, sheet.shapes(), PlanInWords.of(job, extra));
    }

    /** Gives every name its place, those that matter most first, and answers what the key must say. */
    private static List<String> placeNames(Sheet sheet) {
        List<List<Wish>> wishes = new ArrayList<>(sheet.wishes());
        wishes.sort(Comparator.comparingInt(oneOf -> rank(oneOf.get(0).role())));
        List<String> key = new ArrayList<>();
        for (List<Wish> oneOf : wishes) {
            Optional<Wish> granted =
                    oneOf.stream().filter(wish -> isGranted(wish, sheet)).findFirst();
            Wish last = granted.orElse(oneOf.get(oneOf.size() - 1));
            boolean missing = granted.isEmpty() || last.explained();
            if (missing && key.stream().noneMatch(entry -> entry.endsWith(last.inKey()))) {
                key.add(last.inKey());
            }
        }
        return key;
    }

    /** Draws the words if there is room for them. */
    private static boolean isGranted(Wish wish, Sheet sheet) {
        List<Shape> placed = Placer.place(wish, sheet.shapes());
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
