// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Rect;
import spadework.job.Job;
import spadework.job.Side;
import spadework.place.OutlineSpot;
import spadework.place.PlaceWords;

/**
 * How far outside the house each thing is drawn, in points. What was measured near the house stands at its distance;
 * what lies too far for the sheet stands behind that, in its order, and is drawn with a break mark.
 */
public record PlanBands(Map<Side, Band> bySide, List<Double> lineFeet) {
    /** The footing drain's usual distance from the wall. */
    public static final double DRAIN = 6;

    private static final double LANE = 5;
    private static final double LEAST_APART = 2.5;
    private static final double NEAREST_DRAIN = 3.5;
    private static final double EDGE = 8;

    /** From what lies before it to an outlet, and the least of it from the words. */
    private static final double TO_OUTLET = 24;

    private static final double PAST_OTHERS = 16;

    private static final double LEAST_TO_OUTLET = 12;

    /** How much further than the trench things stand to scale in any case, where there are any. */
    private static final double TO_SCALE = 12;

    /**
     * The distances on one side.
     *
     * @param words where words may begin
     * @param toScale what lies within that stands at its measured distance
     * @param apart where each thing stands that lies further out
     * @param outlets the middle of the outlets whose distance is not to scale
     * @param end where the sheet ends
     */
    public record Band(double words, double toScale, Map<PlanLimit, Double> apart, double outlets, double end) {

        public Band {
            apart = Map.copyOf(apart);
        }

        /** The distance of a limit from its wall as it is drawn. */
        double out(PlanLimit limit, double scale) {
            return apart.getOrDefault(limit, limit.distanceFeet() * scale);
        }

        /** The distance of an outlet that was measured at so many feet from the house; 0 for one that was not. */
        double outlet(double feet, double scale) {
            double out = feet * scale;
            return out >= words + LEAST_TO_OUTLET && out <= toScale ? out : outlets;
        }

        Band withOutletsAt(double middle) {
            return new Band(Math.min(words, middle), Math.min(toScale, middle), apart, middle, end);
        }

        Band withStreet(double room) {
            return new Band(words, toScale, apart, outlets, end + room);
        }
    }

    /**
     * Lays a job's surroundings out.
     *
     * @param scale points a foot, by which the trenches at the walls need room; 0 for none
     * @param width of the sheet
     */
    static PlanBands of(Job job, PipeLayout water, Surroundings around, PlanWords words, double scale, double width) {
        Map<Side, Band> bands = new EnumMap<>(Side.class);
        PlanBands none = new PlanBands(Map.of(), around.lineFeet());
        for (Side side : Side.values()) {
            bands.put(side, new BandLayout(job, water, around, none, scale).band(side, 0));
        }
        List<Side> tight = Stream.of(Side.WEST, Side.EAST)
                .filter(side -> !bands.get(side).apart().isEmpty())
                .toList();
        double spare = width
                - PlanFrame.longest(job, true) * scale
                - bands.get(Side.WEST).end()
                - bands.get(Side.EAST).end();
        if (scale > 0 && spare > 0) {
            // What no house and no trench needs brings things to scale that would else be drawn nearer.
            tight.forEach(side ->
                    bands.put(side, new BandLayout(job, water, around, none, scale).band(side, spare / tight.size())));
        }
        PlaceWords.front(job)
                .ifPresent(front ->
                        bands.computeIfPresent(front, (side, band) -> band.withStreet(FrontDrawing.room(side, words))));
        return new PlanBands(bands, around.lineFeet());
    }

    /** The same with every outlet on the sheet, where the sheet was not made for them. */
    PlanBands within(PlanFrame frame) {
        Map<Side, Band> near = new EnumMap<>(Side.class);
        bySide.forEach((side, band) -> {
            Rect free = frame.outside(side, 0);
            double room = OutlineSpot.isAcross(side) ? free.height() : free.width();
            near.put(side, band.withOutletsAt(Math.min(band.outlets(), room - EDGE)));
        });
        return new PlanBands(near, lineFeet);
    }

    /** The distance of the footing drains from the house, clear of every line that stands to scale. */
    double drain(double scale) {
        double at = DRAIN;
        for (double feet : lineFeet) {
            double line = feet * scale;
            if (Math.abs(line - at) < LEAST_APART) {
                at = line - LEAST_APART >= NEAREST_DRAIN ? line - LEAST_APART : line + LEAST_APART;
            }
        }
        return at;
    }

    /** The distance from the house of the pipes that run along it, counted from 0, clear of those lines as well. */
    double lane(int index, double scale) {
        double at = drain(scale);
        for (int i = 0; i <= index; i++) {
            at += LANE;
            for (double feet : lineFeet) {
                at = Math.abs(feet * scale - at) < LEAST_APART ? feet * scale + LEAST_APART : at;
            }
        }
        return at;
    }

    Band on(Side side) {
        return bySide.get(side);
    }

    /** What the layout of one side follows. */
    private record BandLayout(Job job, PipeLayout water, Surroundings around, PlanBands lanes, double scale) {

        /** @param more points that things may stand further out to be to scale */
        Band band(Side side, double more) {
            boolean across = OutlineSpot.isAcross(side);
            boolean dug = job.walls().stream().anyMatch(wall -> wall.faces() == side);
            List<String> outlets = water.outletsOn(side);
            int pipes = water.lanesOn(side, job.site().house());

            double words = pipes > 0 ? lanes.lane(pipes - 1, scale) + 4 : dug || !outlets.isEmpty() ? DRAIN + 4 : 0;
            double next = Math.max(words + (dug ? (across ? 13 : 46) : 0), DugShapes.reach(job, side, scale) + 2);
            double toScale = next + more + (around.on(side).isEmpty() ? TO_OUTLET : TO_SCALE);
            Map<PlanLimit, Double> apart = new HashMap<>();
            for (PlanLimit limit : around.on(side)) {
                boolean behindOutlets = limit.isFar() && !outlets.isEmpty();
                if (!behindOutlets && limit.distanceFeet() * scale <= toScale) {
                    next = Math.max(next, limit.distanceFeet() * scale + after(limit));
                } else if (!behindOutlets) {
                    next = apart(limit, next, apart);
                }
            }
            // A pipe that passes something has room for its mark beside that.
            double outlet = next + (apart.isEmpty() ? TO_OUTLET : PAST_OTHERS);
            next = outlets.isEmpty() ? next : outlet + (across ? 22 : 14 + widest(outlets));
            next = pumped(outlets) ? Math.max(next, outlet + OutletDrawing.DISCHARGE + 4) : next;
            for (PlanLimit limit : around.on(side)) {
                next = limit.isFar() && !outlets.isEmpty() ? apart(limit, next, apart) : next;
            }
            // Names of the lines on the east and west stand above and below them.
            double least = across && around.hasUprightLines() ? 20 : 0;
            double past = DugShapes.overhang(job, side, scale);
            return new Band(words, toScale, apart, outlet, Math.max(Math.max(next, past), least) + EDGE);
        }

        /** Puts something behind what is drawn so far, with room for its mark, and tells where the next stands. */
        private static double apart(PlanLimit limit, double next, Map<PlanLimit, Double> apart) {
            double out = apart.getOrDefault(limit, next + (limit.isTree() ? 17 : 11));
            apart.put(limit, out);
            return Math.max(next, out + after(limit));
        }

        private static double after(PlanLimit limit) {
            return limit.isTree() ? 10 : OutlineSpot.isAcross(limit.side()) ? 9 : 4;
        }

        private boolean pumped(List<String> outlets) {
            return job.water().outlets().stream()
                    .anyMatch(outlet -> outlets.contains(outlet.label()) && OutletDrawing.hasDischarge(outlet));
        }

        private static double widest(List<String> labels) {
            return labels.stream()
                    .mapToDouble(label -> LabelText.width(label, LabelRequest.SMALL))
                    .map(width -> Math.min(width, OutletDrawing.WIDEST))
                    .max()
                    .orElse(0);
        }
    }
}
