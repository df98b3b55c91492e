// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.ground.DigBody;
import spadework.ground.SumpHole;
import spadework.job.Corner;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.NamedWalls;
import spadework.job.Outlet;
import spadework.job.Side;
import spadework.job.SiteLimit;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.job.TestPit;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.place.DrainRoute;
import spadework.place.OutlineSpot;
import spadework.place.OutlineWay;
import spadework.place.PlaceWords;

/**
 * Which trenches come near a marked line before a wall. A job tells the line's distance from that wall and nothing of
 * where it runs on, so whatever is dug on that side of the house is near it unless the job says that it ends short of
 * the line, and what lies nobody knows where is near it too.
 */
public final class NearLine {
    /**
     * So far from a line everything is dug by hand: the widest zone beside a mark that was read, 24 in each side (New
     * York).
     */
    public static final Length ZONE = Length.ofInches(24);

    /** Ends of walls that lie nearer to each other make one trench, feet; common practice, no source. */
    private static final double TOUCHING = 1;

    private static final double NOISE = 1e-6;

    private final Job job;
    private final SiteLimit line;
    private final Side side;

    private NearLine(Job job, SiteLimit line) {
        this.job = job;
        this.line = line;
        this.side = job.getWall(line.wall()).faces();
    }

    /** All that is dug near a line but the wall's own trench, in the order of the bodies. */
    public static List<DigBody> of(Job job, SiteLimit line, List<DigBody> bodies) {
        NearLine near = new NearLine(job, line);
        return bodies.stream().filter(near::isNear).toList();
    }

    private boolean isNear(DigBody body) {
        return switch (body.kind()) {
            case WALL -> meets(body.label());
            case WINDOW_WELL -> false;
            case MAIN -> main(run(job.water().mains(), body.label()));
            case ROOF_LINE -> roofLine(run(job.water().roofLines(), body.label()));
            case LEAD -> lead(body.label());
            case DISCHARGE -> discharge(outlet(body.label()).orElseThrow());
            case SUMP_PIT -> pit(outlet(body.label()).orElseThrow(), body);
            case TEST_PIT -> testPit(body.label());
        };
    }

    /** A wall that meets the line's wall, by the job's corners or on the outline: its trench goes round that corner. */
    private boolean meets(String label) {
        if (label.equals(line.wall())) {
            return false;
        }
        return job.corners().stream()
                        .anyMatch(corner -> joins(corner, label, line.wall()) || joins(corner, line.wall(), label))
                || touches(job.getWall(label), job.getWall(line.wall()));
    }

    private boolean touches(Wall one, Wall other) {
        House house = job.site().house();
        return Stream.of(OutlineSpot.startOf(one), OutlineSpot.endOf(one))
                .anyMatch(end -> Math.min(
                                end.wayTo(OutlineSpot.startOf(other), house),
                                end.wayTo(OutlineSpot.endOf(other), house))
                        < TOUCHING);
    }

    private static boolean joins(Corner corner, String first, String second) {
        return corner.first().wall().equals(first) && corner.second().wall().equals(second);
    }

    private boolean main(SolidRun main) {
        List<OutlineSpot> tees = job.water().drains().stream()
                .filter(drain -> drain.into().equals(main.label()))
                .map(drain -> DrainRoute.of(job, drain).tee())
                .toList();
        return tees.isEmpty() || passes(tees, main);
    }

    private boolean roofLine(SolidRun roofLine) {
        List<OutlineSpot> placed = job.water().downspouts().stream()
                .filter(downspout -> downspout.into().equals(roofLine.label()))
                .flatMap(downspout -> downspout.place().stream())
                .map(OutlineSpot::of)
                .toList();
        return placed.isEmpty() || !PipeWay.isPlaced(job, roofLine) || passes(placed, roofLine);
    }

    private boolean lead(String drain) {
        return job.water().drains().stream()
                .filter(one -> one.label().equals(drain))
                .anyMatch(one -> DrainRoute.of(job, one).tee().side() == side
                        || outlet(one.into())
                                .flatMap(this::side)
                                .filter(ends -> ends != side)
                                .isEmpty());
    }

    private boolean passes(List<OutlineSpot> starts, SolidRun run) {
        boolean inItsTrench =
                run.beside().filter(beside -> beside.wall().equals(line.wall())).isPresent();
        Optional<Outlet> outlet = outlet(run.into());
        Optional<Side> ends = outlet.flatMap(this::side);
        if (inItsTrench || ends.isEmpty()) {
            return true;
        }
        OutlineSpot middle =
                new OutlineSpot(ends.get(), OutlineSpot.sideFeet(job.site().house(), ends.get()) / 2);
        boolean along = starts.stream()
                .anyMatch(start -> isOpposite(start.side(), ends.get())
                        || OutlineWay.sides(job.site().house(), start, middle).contains(side));
        boolean endsShort = starts.stream().allMatch(start -> start.side() == side)
                && ends.get() == side
                && outlet.flatMap(Outlet::fromHouse).filter(this::isShort).isPresent();
        return along && !endsShort;
    }

    /** Between sides that face away from each other nobody knows which way round a pipe goes. */
    private static boolean isOpposite(Side one, Side other) {
        return Math.abs(one.ordinal() - other.ordinal()) == 2;
    }

    private boolean discharge(Outlet sump) {
        Optional<Side> ends = side(sump);
        return ends.isEmpty()
                || (ends.get() == side && sump.fromHouse().filter(this::isShort).isEmpty());
    }

    private boolean pit(Outlet sump, DigBody hole) {
        if (SumpHole.isInside(sump)) {
            return false;
        }
        Optional<Side> stands = side(sump);
        Optional<Length> out = sump.pit()
                .flatMap(SumpPit::fromFooting)
                .map(away -> away.plus(job.getWall(line.wall()).footing().projection())
                        .plus(Length.ofFeet(hole.length())));
        return stands.isEmpty()
                || (stands.get() == side && out.filter(this::isShort).isEmpty());
    }

    private boolean testPit(String label) {
        Optional<String> wall = job.site().testPits().stream()
                .filter(pit -> pit.label().equals(label))
                .map(TestPit::wall)
                .flatMap(Optional::stream)
                .findFirst();
        return wall.isEmpty() || wall.get().equals(line.wall());
    }

    /** Whether what reaches so far from the house stays out of the line's zone. */
    private boolean isShort(Length reach) {
        return reach.plus(ZONE).feet() < line.distance().feet() - NOISE;
    }

    private Optional<Side> side(Outlet outlet) {
        Optional<Side> named = NamedWalls.only(job, outlet.what()).map(Wall::faces);
        return named.isPresent() ? named : PlaceWords.side(job, outlet.what());
    }

    private Optional<Outlet> outlet(String label) {
        return job.water().outlets().stream()
                .filter(outlet -> outlet.label().equals(label))
                .findFirst();
    }

    private static SolidRun run(List<SolidRun> runs, String label) {
        return runs.stream()
                .filter(run -> run.label().equals(label))
                .findFirst()
                .orElseThrow();
    }
}
