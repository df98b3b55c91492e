// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.trench.Bank;
import spadework.trench.BankLine;

/**
 * Trenches on one side of the house that end in the open before one another: where the gap is narrower than their faces
 * are laid back, the ground between is dug once. Walls of one side are taken to stand in one line, and the ground
 * between their ends to be level.
 */
public final class FacingEnds {
    private FacingEnds() {}

    /** One of two ends, with the trench that stops there; feet. */
    private record Side(Wall wall, boolean atEnd, Bank bank) {

        BankLine line() {
            return bank.line(wall.deepestTrench());
        }

        double height() {
            return (atEnd ? wall.depthEnd() : wall.depthStart())
                    .plus(wall.footing().thickness())
                    .feet();
        }

        double footing() {
            return wall.footing().thickness().feet();
        }

        /** How far the face lies beyond the wall's end at that depth under grade. */
        double out(double depth) {
            double over = height() - depth;
            boolean ramp = wall.digging().ends().at(atEnd) == EndKind.RAMP;
            return ramp ? FreeEnds.run(wall, atEnd, bank) * over : line().out(over);
        }

        /** How far back from the end the trench is dug at that depth: not all along where the ground falls. */
        double back(double depth) {
            double over = height() - depth;
            double far = (atEnd ? wall.depthStart() : wall.depthEnd()).feet() + footing();
            double length = wall.length().feet();
            return far >= over ? length : length * (height() - over) / (height() - far);
        }

        double inner(double depth) {
            return height() - depth <= footing() ? wall.footing().projection().feet() : 0;
        }

        double reach(double depth) {
            return wall.footing()
                            .projection()
                            .plus(wall.digging().bottomWidth())
                            .feet()
                    + line().out(height() - depth);
        }

        List<Double> faces() {
            List<Double> faces = new ArrayList<>(
                    line().steps().stream().map(step -> height() - step).toList());
            faces.add(height() - footing());
            faces.add(height() - (atEnd ? wall.depthStart() : wall.depthEnd()).feet() - footing());
            return faces;
        }
    }

    /** What is shared, counted with the wall that comes first along its side; areas are negative. */
    public static List<Overlap> of(Job job) {
        FreeEnds free = new FreeEnds(job);
        List<Overlap> found = new ArrayList<>();
        for (Wall wall : job.walls()) {
            for (WallEnd end : free.of(wall)) {
                if (end.atEnd() && FreeEnds.run(wall, true, Bank.of(job.site(), wall)) > 0) {
                    next(job, free, wall)
                            .flatMap(other -> shared(job, wall, other))
                            .ifPresent(found::add);
                }
            }
        }
        return found;
    }

    /** The wall that begins next on that side, if it begins in the open and is laid back there. */
    private static Optional<Wall> next(Job job, FreeEnds free, Wall wall) {
        double end = wall.from().plus(wall.length()).feet();
        return job.walls().stream()
                .filter(other -> other.faces() == wall.faces())
                .filter(other -> other.from().feet() > end)
                .min(Comparator.comparing(Wall::from))
                .filter(other -> free.of(other).contains(new WallEnd(other.label(), false)))
                .filter(other -> FreeEnds.run(other, false, Bank.of(job.site(), other)) > 0);
    }

    /** How far both are dug at that depth, along the side. */
    private static double along(Side one, Side two, double gap, double depth) {
        double from = Math.max(-one.back(depth), gap - two.out(depth));
        double to = Math.min(one.out(depth), gap + two.back(depth));
        return Math.max(0, to - from);
    }

    private static Optional<Overlap> shared(Job job, Wall wall, Wall other) {
        Side one = new Side(wall, true, Bank.of(job.site(), wall));
        Side two = new Side(other, false, Bank.of(job.site(), other));
        double gap = other.from().feet() - wall.from().plus(wall.length()).feet();
        double deep = Math.min(one.height(), two.height());
        List<Double> faces = new ArrayList<>(one.faces());
        faces.addAll(two.faces());
        List<Slice> slices = SharedAreas.slices(
                0,
                deep,
                faces,
                List.of(
                        depth -> one.out(depth) + two.out(depth) - gap,
                        depth -> one.out(depth) - gap - two.back(depth),
                        depth -> two.out(depth) - gap - one.back(depth),
                        depth -> one.reach(depth) - two.reach(depth)),
                depth -> -along(one, two, gap, depth)
                        * Math.max(
                                0,
                                Math.min(one.reach(depth), two.reach(depth))
                                        - Math.max(one.inner(depth), two.inner(depth))));
        return slices.isEmpty()
                ? Optional.empty()
                : Optional.of(new Overlap(List.of(wall.label(), other.label()), wall.label(), slices));
    }
}
