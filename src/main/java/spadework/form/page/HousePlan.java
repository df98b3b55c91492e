// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.draft.Draft;
import spadework.draft.FileSchema;
import spadework.draft.Pointer;
import spadework.draft.TypedValue;
import spadework.form.field.NewRowValues;
import spadework.measure.Length;
import spadework.measure.UnreadableMeasure;

/**
 * The house from above as a job's draft has it, and the edits that a plan makes in the draft. Places on the outline are
 * feet from its corner at the north-west, clockwise.
 *
 * @param eastWest feet of the sides that face north and south
 * @param northSouth feet of the sides that face east and west
 */
record HousePlan(double eastWest, double northSouth, List<Stretch> walls) {
    static final List<String> SIDES = List.of("north", "east", "south", "west");
    /** Where nobody has said how large the house is, it is drawn so. */
    private static final double USUAL_SIDE = 36;

    private static final double CORNER_SNAP = 1.25;

    HousePlan {
        walls = List.copyOf(walls);
    }

    /**
     * A wall that is dug.
     *
     * @param row its place in the list of walls
     * @param from feet from the corner where its side begins
     */
    record Stretch(int row, String label, int side, double from, double length) {}

    /** A point of the plan, in feet from the corner at the north-west, east and south. */
    record Spot(double x, double y) {}

    /** @param draft the job, with what is assumed of it */
    static HousePlan of(Draft draft) {
        double eastWest = feet(draft, "/site/house/eastWest").orElse(USUAL_SIDE);
        double northSouth = feet(draft, "/site/house/northSouth").orElse(USUAL_SIDE);
        List<Stretch> walls = new ArrayList<>();
        for (int i = 0; i < draft.rows("/walls"); i++) {
            String row = Pointer.of("/walls", i);
            int side = SIDES.indexOf(draft.shown(row + "/faces"));
            Optional<Double> length = feet(draft, row + "/length");
            if (side >= 0 && length.isPresent()) {
                double whole = side % 2 == 0 ? eastWest : northSouth;
                double from = feet(draft, row + "/from").orElse(0.0);
                walls.add(new Stretch(
                        i, draft.shown(row + "/label"), side, turned(side, whole, from, length.get()), length.get()));
            }
        }
        return new HousePlan(Math.max(1, eastWest), Math.max(1, northSouth), walls);
    }

    private static Optional<Double> feet(Draft draft, String place) {
        try {
            return Optional.of(Length.parse(draft.shown(place)).feet());
        } catch (UnreadableMeasure unreadable) {
            return Optional.empty();
        }
    }

    /**
     * The file measures from the west and the north corner, the outline runs clockwise: on the south and west sides
     * they run against each other.
     */
    private static double turned(int side, double whole, double from, double length) {
        return side < 2 ? from : whole - from - length;
    }

    /** Feet from the corner from which the file measures a wall. */
    double inFile(Stretch wall) {
        return turned(wall.side(), length(wall.side()), wall.from(), wall.length());
    }

    double around() {
        return 2 * (eastWest + northSouth);
    }

    double length(int side) {
        return side % 2 == 0 ? eastWest : northSouth;
    }

    /** Where a side begins on the outline. */
    double start(int side) {
        double start = 0;
        for (int i = 0; i < side; i++) {
            start += length(i);
        }
        return start;
    }

    /** The side on which a place of the outline lies. */
    int side(double along) {
        double at = wrapped(along);
        int side = 0;
        while (side < SIDES.size() - 1 && at >= start(side) + length(side)) {
            side++;
        }
        return side;
    }

    double wrapped(double along) {
        double at = along % around();
        return at < 0 ? at + around() : at;
    }

    /** A place of a side, so far out from the house. */
    Spot spot(int side, double along, double out) {
        return switch (side) {
            case 0 -> new Spot(along, -out);
            case 1 -> new Spot(eastWest + out, along);
            case 2 -> new Spot(eastWest - along, northSouth + out);
            default -> new Spot(-out, northSouth - along);
        };
    }

    Spot spot(double along) {
        int side = side(along);
        return spot(side, wrapped(along) - start(side), 0);
    }

    /** The place of the outline that is nearest to a point. */
    double nearest(Spot point) {
        double best = 0;
        double least = Double.MAX_VALUE;
        for (int side = 0; side < SIDES.size(); side++) {
            double along = Math.max(0, Math.min(length(side), along(side, point)));
            Spot on = spot(side, along, 0);
            double distance = Math.hypot(on.x() - point.x(), on.y() - point.y());
            if (distance < least) {
                least = distance;
                best = start(side) + along;
            }
        }
        return best;
    }

    private double along(int side, Spot point) {
        return switch (side) {
            case 0 -> point.x();
            case 1 -> point.y();
            case 2 -> eastWest - point.x();
            default -> northSouth - point.y();
        };
    }

    double distance(Spot point) {
        Spot on = spot(nearest(point));
        return Math.hypot(on.x() - point.x(), on.y() - point.y());
    }

    /** A place on a side that snaps to its corners, to the ends of walls there, and else to half feet. */
    double snapped(int side, double along) {
        List<Double> holds = new ArrayList<>(List.of(0.0, length(side)));
        walls.stream().filter(wall -> wall.side() == side).forEach(wall -> {
            holds.add(wall.from());
            holds.add(wall.from() + wall.length());
        });
        return holds.stream()
                .filter(hold -> Math.abs(hold - along) < CORNER_SNAP)
                .min((one, other) -> Double.compare(Math.abs(one - along), Math.abs(other - along)))
                .orElse(Math.max(0, Math.min(length(side), Math.round(along * 2) / 2.0)));
    }

    /** The wall that lies at a place of the outline. */
    Optional<Stretch> at(double along) {
        int side = side(along);
        double on = wrapped(along) - start(side);
        return walls.stream()
                .filter(wall ->
                        wall.side() == side && on >= wall.from() - 0.01 && on <= wall.from() + wall.length() + 0.01)
                .findFirst();
    }

    /** The draft with one more wall; the first wall that nobody has measured takes the measures. */
    Draft dug(Draft draft, int side, double from, double to) {
        int row = draft.rows("/walls");
        for (int i = draft.rows("/walls") - 1; i >= 0; i--) {
            row = draft.shown(Pointer.of("/walls", i) + "/length").isEmpty() ? i : row;
        }
        Draft made = row == draft.rows("/walls") ? NewRowValues.added(draft, "/walls") : draft;
        return placed(made, new Stretch(row, "", side, Math.min(from, to), Math.abs(to - from)));
    }

    Draft placed(Draft draft, Stretch wall) {
        String row = Pointer.of("/walls", wall.row());
        return draft.typed(row + "/faces", SIDES.get(wall.side()))
                .typed(row + "/from", Length.ofFeet(inFile(wall)).text())
                .typed(row + "/length", Length.ofFeet(wall.length()).text());
    }

    /** The draft with a wall put among those that the first drain runs along, or taken out of them. */
    static Draft drained(Draft draft, String label) {
        Draft made = draft.rows("/water/drains") == 0 ? NewRowValues.added(draft, "/water/drains") : draft;
        String place = "/water/drains/0/along";
        List<String> along = new ArrayList<>(List.of(made.shown(place).split(", ")));
        along.removeIf(String::isEmpty);
        if (!along.remove(label)) {
            along.add(label);
        }
        return made.typed(place, String.join(", ", along));
    }

    /** The draft with something beside the nearest wall, so far from it. */
    Draft beside(Draft draft, String kind, Spot point) {
        Optional<Stretch> wall =
                walls.stream().min((one, other) -> Double.compare(distance(one, point), distance(other, point)));
        if (wall.isEmpty()) {
            return draft;
        }
        int row = draft.rows("/site/limits");
        String limit = Pointer.of("/site/limits", row);
        return draft.insertedBlank("/site/limits", row)
                .typed(limit + "/kind", kind)
                .typed(limit + "/wall", wall.get().label())
                .typed(limit + "/distance", whole(distance(wall.get(), point)));
    }

    private double distance(Stretch wall, Spot point) {
        double along = Math.max(wall.from(), Math.min(wall.from() + wall.length(), along(wall.side(), point)));
        Spot on = spot(wall.side(), along, 0);
        return Math.hypot(on.x() - point.x(), on.y() - point.y());
    }

    /** The draft with the first outlet so far from the house. */
    Draft outlet(Draft draft, Spot point) {
        Draft made = draft.rows("/water/outlets") == 0 ? NewRowValues.added(draft, "/water/outlets") : draft;
        return made.typed("/water/outlets/0/fromHouse", whole(distance(point)));
    }

    /** The draft with one more downspout, at that place of the outline to the foot. */
    Draft downspout(Draft draft, double along) {
        String place = Pointer.of("/water/downspouts", draft.rows("/water/downspouts")) + "/place";
        int side = side(along);
        double from = turned(side, length(side), wrapped(along) - start(side), 0);
        return NewRowValues.added(draft, "/water/downspouts")
                .typed(place + "/side", SIDES.get(side))
                .typed(place + "/from", Length.ofFeet(Math.rint(from)).text());
    }

    /** Where the draft has a downspout; empty where it does not say. */
    Optional<Spot> downspout(Draft draft, int row) {
        String place = Pointer.of("/water/downspouts", row) + "/place";
        int side = SIDES.indexOf(draft.shown(place + "/side"));
        return side < 0
                ? Optional.empty()
                : feet(draft, place + "/from").map(from -> spot(side, turned(side, length(side), from, 0), 0));
    }

    /** A distance that was pointed at is good to a foot. */
    private static String whole(double feet) {
        return Length.ofFeet(Math.max(1, Math.rint(feet))).text();
    }

    /** Feet of what somebody typed, as 26 or 26'6. */
    static Optional<Double> typed(String words) {
        return FileSchema.job().at("/walls/0/length").flatMap(spot -> {
            try {
                return Optional.of(Length.parse(TypedValue.inFull(spot, words)).feet());
            } catch (UnreadableMeasure unreadable) {
                return Optional.empty();
            }
        });
    }
}
