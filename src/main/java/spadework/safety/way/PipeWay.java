// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.ground.SumpHole;
import spadework.job.FootingDrain;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.measure.Length;
import spadework.place.DrainRoute;
import spadework.place.OutlineSpot;
import spadework.place.OutlineWay;
import spadework.place.PlaceWords;

/**
 * The shortest way of a solid pipe by what the job says of its places: along the house through all places where water
 * comes in, on to the side of its outlet, and straight out as far as the outlet lies from the house. A main takes in
 * water at the tees of its drains, a roof line at its downspouts. Whatever the job does not say counts as nothing, so
 * the way is never longer than the true one: without the outlet's side the pipe goes out where it likes, without its
 * distance it ends at the house, and a downspout without a place stands where it is reached for nothing.
 *
 * @param feet of the way
 * @param slack feet that a written length may be shorter: {@link #NEAR} for places that were measured to the foot and
 *     for a drain that lies off the wall, and what pipes laid on the slant between several starts can save
 * @param endIsKnown whether the job says where it ends: the side of the house and how far out
 */
record PipeWay(double feet, double slack, boolean endIsKnown) {
    /** Feet; common practice, no source. */
    private static final double NEAR = 2;

    /**
     * What the shortest net through points on a line saves of the line itself at most: three branches that meet at
     * 120 degrees have it at 1 less half the root of 3.
     */
    private static final double SLANT = 1 - Math.sqrt(3) / 2;

    /** The way of a main, its drains' tees where the job has them. */
    static PipeWay ofMain(Job job, SolidRun main) {
        return of(job, main, feeding(job, main).map(drain -> tee(job, drain)).toList());
    }

    /** The same if the water left each drain at its other end; empty where that is no matter of turning one round. */
    static Optional<PipeWay> fromOtherEnd(Job job, SolidRun main) {
        List<DrainRoute> routes = feeding(job, main)
                .map(drain -> DrainRoute.of(job, drain))
                .filter(route -> route.arms().size() == 1)
                .toList();
        return routes.size() == 1 && feeding(job, main).count() == 1
                ? Optional.of(of(job, main, List.of(routes.get(0).arms().get(0).get(0))))
                : Optional.empty();
    }

    static PipeWay ofRoofLine(Job job, SolidRun line) {
        return of(job, line, downspouts(job, line));
    }

    /** Whether the job says where all downspouts of a roof line come down. */
    static boolean isPlaced(Job job, SolidRun line) {
        return job.water().downspouts().stream()
                .filter(downspout -> downspout.into().equals(line.label()))
                .allMatch(downspout -> downspout.place().isPresent());
    }

    /**
     * The way of a sump's discharge pipe: from the middle of the hole out to the distance from the house at which the
     * outlet lies.
     */
    static PipeWay ofDischarge(Job job, Outlet sump) {
        double out = sump.fromHouse().map(Length::feet).orElse(0.0);
        if (SumpHole.isInside(sump)) {
            return new PipeWay(out, NEAR, sump.fromHouse().isPresent());
        }
        Optional<Double> hole = hole(job, sump);
        double least = hole.map(middle -> Math.max(0, out - middle)).orElse(0.0);
        return new PipeWay(least, NEAR, sump.fromHouse().isPresent() && hole.isPresent());
    }

    /** From the wall to the middle of a sump's hole, feet. */
    private static Optional<Double> hole(Job job, Outlet sump) {
        double footing = job.walls().stream()
                .mapToDouble(wall -> wall.footing().projection().feet())
                .max()
                .orElse(0);
        return sump.pit()
                .flatMap(SumpPit::fromFooting)
                .map(clear ->
                        footing + clear.feet() + SumpHole.of(job, sump).body().length() / 2);
    }

    /**
     * The sides of the house that a main or a roof line passes after the one at which it starts, by the shorter way;
     * none where it goes straight out. Empty where the job does not say at which side it ends, or where it starts.
     */
    static Optional<List<Side>> sides(Job job, SolidRun run) {
        House house = job.site().house();
        List<OutlineSpot> starts = job.water().mains().contains(run)
                ? feeding(job, run).map(drain -> tee(job, drain)).toList()
                : downspouts(job, run);
        return starts.isEmpty()
                ? Optional.empty()
                : end(job, run)
                        .map(side -> starts.stream()
                                .flatMap(start -> onward(house, start, side).stream())
                                .distinct()
                                .toList());
    }

    private static List<Side> onward(House house, OutlineSpot start, Side side) {
        OutlineSpot first = new OutlineSpot(side, 0);
        OutlineSpot second = new OutlineSpot(side, OutlineSpot.sideFeet(house, side));
        boolean nearer = OutlineWay.feet(house, start, first) <= OutlineWay.feet(house, start, second);
        return OutlineWay.sides(house, start, nearer ? first : second).stream()
                .filter(passed -> passed != start.side())
                .toList();
    }

    private static Optional<Side> end(Job job, SolidRun run) {
        return job.water().outlets().stream()
                .filter(one -> one.label().equals(run.into()))
                .findFirst()
                .flatMap(one -> PlaceWords.side(job, one.what()));
    }

    private static List<OutlineSpot> downspouts(Job job, SolidRun line) {
        return job.water().downspouts().stream()
                .filter(downspout -> downspout.into().equals(line.label()))
                .flatMap(downspout -> downspout.place().stream())
                .map(OutlineSpot::of)
                .toList();
    }

    private static PipeWay of(Job job, SolidRun run, List<OutlineSpot> starts) {
        Optional<Outlet> outlet = job.water().outlets().stream()
                .filter(one -> one.label().equals(run.into()))
                .findFirst();
        Optional<Side> side = outlet.flatMap(one -> PlaceWords.side(job, one.what()));
        Optional<Double> out = outlet.flatMap(one ->
                one.kind() == OutletKind.SUMP ? hole(job, one) : one.fromHouse().map(Length::feet));
        double along = side.map(ends -> onward(job, starts, ends))
                .orElseGet(() -> OutlineWay.through(job.site().house(), starts));
        double slant = starts.size() > 1 ? SLANT * OutlineWay.through(job.site().house(), starts) : 0;
        return new PipeWay(along + out.orElse(0.0), NEAR + slant, side.isPresent() && out.isPresent());
    }

    /** Along the house through all starts and to that side. */
    private static double onward(Job job, List<OutlineSpot> starts, Side side) {
        if (starts.isEmpty() || starts.stream().anyMatch(start -> start.side() == side)) {
            return OutlineWay.through(job.site().house(), starts);
        }
        double end = OutlineSpot.sideFeet(job.site().house(), side);
        return Stream.of(0.0, end)
                .map(corner -> {
                    List<OutlineSpot> all = new ArrayList<>(starts);
                    all.add(new OutlineSpot(side, corner));
                    return OutlineWay.through(job.site().house(), all);
                })
                .min(Double::compare)
                .orElseThrow();
    }

    private static Stream<FootingDrain> feeding(Job job, SolidRun main) {
        return job.water().drains().stream().filter(drain -> drain.into().equals(main.label()));
    }

    private static OutlineSpot tee(Job job, FootingDrain drain) {
        return DrainRoute.of(job, drain).tee();
    }

    /** Whether a pipe of that length is too short for it. */
    boolean isLongerThan(Length written) {
        return written.feet() < feet - slack - 1e-6;
    }
}
