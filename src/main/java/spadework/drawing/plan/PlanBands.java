// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Rect;
import spadework.job.Job;
import spadework.job.Side;

/**
 * How far outside the house each thing is drawn, in points, side by side: pipes first, then the walls' lengths, trees
 * and near lines, outlets, and the lot line last.
 */
public record PlanBands(Map<Side, Band> bySide) {
    /** The footing drain's distance from the wall. */
    public static final double DRAIN = 9;

    /** From one line before the house to the next. */
    static final double LINE_ACROSS = 18;

    static final double LINE_UPRIGHT = 14;

    private static final double FIRST_LANE = 15;
    private static final double LANE = 5;
    private static final double EDGE = 8;

    /**
     * The distances on one side.
     *
     * @param words where words may begin
     * @param trees the middle of the trees
     * @param near the first near line
     * @param outlets the middle of the outlets
     * @param far the first line beyond them
     * @param end where the sheet ends
     */
    public record Band(double words, double trees, double near, double outlets, double far, double end) {

        Band withOutletsAt(double middle) {
            return new Band(Math.min(words, middle), trees, near, middle, far, end);
        }

        Band withStreet(double room) {
            return new Band(words, trees, near, outlets, far, end + room);
        }
    }

    /** @param scale points a foot, by which the trenches at the walls need room; 0 for none */
    static PlanBands of(Job job, PipeLayout water, Surroundings around, PlanWords words, double scale) {
        Map<Side, Band> bands = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            bands.put(side, band(job, water, around, side, scale));
        }
        PlaceWords.front(job)
                .ifPresent(front ->
                        bands.computeIfPresent(front, (side, band) -> band.withStreet(FrontDrawing.room(side, words))));
        return new PlanBands(bands);
    }

    /** The same with every outlet on the sheet, where the sheet was not made for them. */
    PlanBands within(PlanFrame frame) {
        Map<Side, Band> near = new EnumMap<>(Side.class);
        bySide.forEach((side, band) -> {
            Rect free = frame.outside(side, 0);
            double room = OutlineSpot.isAcross(side) ? free.height() : free.width();
            near.put(side, band.withOutletsAt(Math.min(band.outlets(), room - EDGE)));
        });
        return new PlanBands(near);
    }

    /** The distance from the house of the pipes that run along it, counted from 0. */
    static double lane(int index) {
        return FIRST_LANE + LANE * index;
    }

    Band on(Side side) {
        return bySide.get(side);
    }

    private static Band band(Job job, PipeLayout water, Surroundings around, Side side, double scale) {
        boolean across = OutlineSpot.isAcross(side);
        boolean dug = job.walls().stream().anyMatch(wall -> wall.faces() == side);
        List<String> outlets = water.outletsOn(side);
        int lanes = water.lanesOn(side, job.site().house());
        double line = across ? LINE_ACROSS : LINE_UPRIGHT;

        double words = lanes > 0 ? lane(lanes - 1) + 4 : dug || !outlets.isEmpty() ? DRAIN + 4 : 0;
        double next = Math.max(words + (dug ? (across ? 13 : 46) : 0), DugShapes.reach(job, side, scale) + 2);
        double trees = next + 10;
        next += around.trees(side).isEmpty() ? 0 : 20;
        List<PlanLimit> nearLines = around.lines(side, false);
        double near = next + (across ? 12 : 8);
        next += nearLines.isEmpty() ? 0 : near - next + (nearLines.size() - 1) * line + (across ? 9 : 4);
        double outlet = next + 24;
        next = outlets.isEmpty() ? next : outlet + (across ? 22 : 14 + widest(outlets));
        next = pumped(job, outlets) ? Math.max(next, outlet + OutletDrawing.DISCHARGE + 4) : next;
        List<PlanLimit> farLines = around.lines(side, true);
        double far = next + (across ? 12 : 8);
        next += farLines.isEmpty() ? 0 : far - next + (farLines.size() - 1) * line + (across ? 9 : 4);
        // Names of the lines on the east and west stand above and below them.
        double least = across && hasUprightLines(around) ? 20 : 0;
        double past = DugShapes.overhang(job, side, scale);
        return new Band(words, trees, near, outlet, far, Math.max(Math.max(next, past), least) + EDGE);
    }

    private static boolean pumped(Job job, List<String> outlets) {
        return job.water().outlets().stream()
                .anyMatch(outlet -> outlets.contains(outlet.label()) && OutletDrawing.hasDischarge(outlet));
    }

    private static boolean hasUprightLines(Surroundings around) {
        return around.limits().stream().anyMatch(limit -> !limit.isTree() && !OutlineSpot.isAcross(limit.side()));
    }

    private static double widest(List<String> labels) {
        return labels.stream()
                .mapToDouble(label -> LabelText.width(label, LabelRequest.SMALL))
                .map(width -> Math.min(width, OutletDrawing.WIDEST))
                .max()
                .orElse(0);
    }
}
