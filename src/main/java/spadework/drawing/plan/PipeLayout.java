// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.drawing.shape.Shape;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.Side;
import spadework.job.SolidRun;
import spadework.job.Water;
import spadework.place.DrainRoute;
import spadework.place.OutlineSpot;
import spadework.place.OutlineWay;
import spadework.place.PlaceWords;

/**
 * Where every pipe begins and on which side of the house every outlet lies. Only the places of drains, and of some
 * downspouts, were measured; a main begins at the tee of the last drain that feeds it and leaves straight away from
 * the house. Roof water comes down where the job says, else at a wall that is dug, on the side of its outlet if it can.
 *
 * @param sides the side of each outlet, by label: as the job's words have it, else where its pipe leaves
 * @param unplaced labels of the outlets of which the job does not say where they are
 */
public record PipeLayout(List<DrainRoute> drains, List<PlanRun> runs, Map<String, Side> sides, Set<String> unplaced) {
    /** Feet by which pipes that come round a corner are told apart. */
    private static final double IN_TURN = 0.01;

    public static PipeLayout of(Job job) {
        Water water = job.water();
        List<DrainRoute> drains =
                water.drains().stream().map(drain -> DrainRoute.of(job, drain)).toList();
        OutlineSpot usual = usualSpot(job, drains);
        List<PlanRun> runs = new ArrayList<>();
        for (SolidRun main : water.mains()) {
            List<OutlineSpot> tees = tees(drains, main.label());
            runs.add(new PlanRun(
                    main.label(),
                    Shape.Role.MAIN,
                    Optional.of(main.length()),
                    tees.isEmpty() ? List.of(usual) : tees,
                    tees.isEmpty() ? usual : tees.get(tees.size() - 1),
                    main.into()));
        }
        for (Outlet outlet : water.outlets()) {
            for (OutlineSpot tee : tees(drains, outlet.label())) {
                runs.add(new PlanRun(
                        "", Shape.Role.MAIN, OutletDrawing.fromHouse(outlet), List.of(tee), tee, outlet.label()));
            }
        }
        Map<String, Side> sides = new LinkedHashMap<>();
        Set<String> unplaced = new LinkedHashSet<>();
        for (Outlet outlet : water.outlets()) {
            Optional<Side> said = PlaceWords.side(job, outlet.what());
            sides.put(outlet.label(), said.orElseGet(() -> sideOf(outlet, runs, usual)));
            if (said.isEmpty()) {
                unplaced.add(outlet.label());
            }
        }
        DownspoutSpots free = new DownspoutSpots(job.site().house(), runs);
        water.downspouts().stream()
                .flatMap(downspout -> downspout.place().stream())
                .map(OutlineSpot::of)
                .forEach(free::take);
        for (SolidRun line : water.roofLines()) {
            List<Downspout> downspouts = water.downspouts().stream()
                    .filter(downspout -> downspout.into().equals(line.label()))
                    .toList();
            Side ends = sides.getOrDefault(line.into(), usual.side());
            List<OutlineSpot> spots = spots(downspouts, free, roofSide(job, ends, usual));
            runs.add(new PlanRun(
                    line.label(),
                    Shape.Role.ROOF_LINE,
                    Optional.of(line.length()),
                    lastFirst(job.site().house(), spots, ends),
                    spots.get(0),
                    line.into()));
        }
        return new PipeLayout(drains, List.copyOf(runs), sides, unplaced);
    }

    /** Where the downspouts of a roof line come down: as the job says, else on that side. */
    private static List<OutlineSpot> spots(List<Downspout> downspouts, DownspoutSpots free, Side side) {
        List<OutlineSpot> spots = new ArrayList<>();
        downspouts.stream()
                .flatMap(downspout -> downspout.place().stream())
                .map(OutlineSpot::of)
                .forEach(spots::add);
        spots.addAll(free.next(side, Math.max(1, downspouts.size()) - spots.size()));
        return spots;
    }

    /** The spot that lies last on the way to another side first: there the pipe leaves, and no water runs back. */
    private static List<OutlineSpot> lastFirst(House house, List<OutlineSpot> spots, Side ends) {
        OutlineSpot middle = new OutlineSpot(ends, OutlineSpot.sideFeet(house, ends) / 2);
        boolean here = spots.get(0).side() == ends;
        return here
                ? spots
                : spots.stream()
                        .sorted(Comparator.comparingDouble(spot -> OutlineWay.feet(house, spot, middle)))
                        .toList();
    }

    /** The pipes that run along the house before they leave it; each has a lane of its own. */
    List<PlanRun> lanes() {
        return runs.stream()
                .filter(run ->
                        run.starts().size() > 1 || sideOf(run) != run.leaves().side())
                .toList();
    }

    /** The side on which a pipe ends. */
    Side sideOf(PlanRun run) {
        return sides.getOrDefault(run.outlet(), run.leaves().side());
    }

    /** How many lanes lie between the house and the first words on a side. */
    int lanesOn(Side side, House house) {
        List<PlanRun> lanes = lanes();
        int needed = 0;
        for (int i = 0; i < lanes.size(); i++) {
            PlanRun run = lanes.get(i);
            boolean passes = passed(run, house).contains(side)
                    || run.starts().stream()
                            .anyMatch(start ->
                                    OutlineWay.sides(house, start, run.leaves()).contains(side));
            needed = passes ? i + 1 : needed;
        }
        return needed;
    }

    /** The sides that a pipe passes from where it leaves its drain to the side of its outlet. */
    List<Side> passed(PlanRun run, House house) {
        return passed(run, run.leaves(), house);
    }

    private List<Side> passed(PlanRun run, OutlineSpot from, House house) {
        OutlineSpot middle = new OutlineSpot(sideOf(run), OutlineSpot.sideFeet(house, sideOf(run)) / 2);
        return OutlineWay.sides(house, from, middle);
    }

    /**
     * Feet along a pipe's last side at which it comes to that side from the start that the job lists first: there, or
     * round the corner, the pipe nearest to the house as the first.
     */
    double comesIn(PlanRun run, House house) {
        List<Side> passed = passed(run, run.listed(), house);
        Side last = passed.get(passed.size() - 1);
        if (passed.size() == 1) {
            return run.listed().feet();
        }
        Side before = passed.get(passed.size() - 2);
        boolean fromLow = before == Side.WEST || before == Side.NORTH;
        double behind = lanes().indexOf(run) * IN_TURN;
        return fromLow ? -behind : OutlineSpot.sideFeet(house, last) + behind;
    }

    List<String> outletsOn(Side side) {
        return sides.entrySet().stream()
                .filter(entry -> entry.getValue() == side)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Tees of the drains that run into something, the last drain's first. */
    private static List<OutlineSpot> tees(List<DrainRoute> drains, String into) {
        List<OutlineSpot> tees = new ArrayList<>();
        for (DrainRoute route : drains) {
            FootingDrain drain = route.drain();
            if (drain.into().equals(into)) {
                tees.add(0, route.tee());
            }
        }
        return tees;
    }

    /** Where a pipe leaves that no drain feeds. */
    private static OutlineSpot usualSpot(Job job, List<DrainRoute> drains) {
        Side side = Side.SOUTH;
        if (!drains.isEmpty()) {
            side = drains.get(drains.size() - 1).tee().side();
        } else if (!job.walls().isEmpty()) {
            side = job.walls().get(job.walls().size() - 1).faces();
        }
        return new OutlineSpot(side, OutlineSpot.sideFeet(job.site().house(), side) / 2);
    }

    /** Downspouts that are led away stand at a wall that is dug: at the outlet's side if there is one. */
    private static Side roofSide(Job job, Side outlet, OutlineSpot usual) {
        boolean dug = job.walls().isEmpty() || job.walls().stream().anyMatch(wall -> wall.faces() == outlet);
        return dug ? outlet : usual.side();
    }

    private static Side sideOf(Outlet outlet, List<PlanRun> runs, OutlineSpot usual) {
        return runs.stream()
                .filter(run -> run.outlet().equals(outlet.label()))
                .map(run -> run.leaves().side())
                .findFirst()
                .orElse(usual.side());
    }
}
