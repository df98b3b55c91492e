package spadework.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.job.FootingDrain;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.Side;
import spadework.job.SolidRun;
import spadework.job.Water;

/**
 * Where every pipe begins and on which side of the house every outlet lies. Only the drains' places were measured; a
 * main begins at the tee of the last drain that feeds it and leaves straight away from the house, and roof water
 * leaves on the side of its outlet.
 *
 * @param sides the side of each outlet, by label
 */
record Waterways(List<DrainRoute> drains, List<Run> runs, Map<String, Side> sides) {

    static Waterways of(Job job) {
        Water water = job.water();
        List<DrainRoute> drains =
                water.drains().stream().map(drain -> DrainRoute.of(job, drain)).toList();
        Spot usual = usualSpot(job, drains);
        List<Run> runs = new ArrayList<>();
        for (SolidRun main : water.mains()) {
            List<Spot> tees = tees(drains, main.label());
            runs.add(new Run(main.label(), Shape.Role.MAIN, tees.isEmpty() ? List.of(usual) : tees, main.into()));
        }
        for (Outlet outlet : water.outlets()) {
            for (Spot tee : tees(drains, outlet.label())) {
                runs.add(new Run("", Shape.Role.MAIN, List.of(tee), outlet.label()));
            }
        }
        Map<String, Side> sides = new LinkedHashMap<>();
        for (Outlet outlet : water.outlets()) {
            sides.put(outlet.label(), sideOf(outlet, runs, usual));
        }
        DownspoutSpots free = new DownspoutSpots(job.site().house(), runs);
        for (SolidRun line : water.roofLines()) {
            int downspouts = (int) water.downspouts().stream()
                    .filter(downspout -> downspout.into().equals(line.label()))
                    .count();
            Side side = sides.getOrDefault(line.into(), usual.side());
            runs.add(
                    new Run(line.label(), Shape.Role.ROOF_LINE, free.next(side, Math.max(1, downspouts)), line.into()));
        }
        return new Waterways(drains, List.copyOf(runs), sides);
    }

    /** The pipes that run along the house before they leave it; each has a lane of its own. */
    List<Run> lanes() {
        return runs.stream()
                .filter(run ->
                        run.starts().size() > 1 || sideOf(run) != run.leaves().side())
                .toList();
    }

    /** The side on which a pipe ends. */
    Side sideOf(Run run) {
        return sides.getOrDefault(run.outlet(), run.leaves().side());
    }

    /** How many lanes lie between the house and the first words on a side. */
    int lanesOn(Side side, House house) {
        List<Run> lanes = lanes();
        int needed = 0;
        for (int i = 0; i < lanes.size(); i++) {
            Run run = lanes.get(i);
            boolean passes = passed(run, house).contains(side)
                    || run.starts().stream()
                            .anyMatch(start -> RoundTheHouse.sides(house, start, run.leaves())
                                    .contains(side));
            needed = passes ? i + 1 : needed;
        }
        return needed;
    }

    /** The sides that a pipe passes from where it leaves its drain to the side of its outlet. */
    List<Side> passed(Run run, House house) {
        Spot middle = new Spot(sideOf(run), Spot.sideFeet(house, sideOf(run)) / 2);
        return RoundTheHouse.sides(house, run.leaves(), middle);
    }

    List<String> outletsOn(Side side) {
        return sides.entrySet().stream()
                .filter(entry -> entry.getValue() == side)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Tees of the drains that run into something, the last drain's first. */
    private static List<Spot> tees(List<DrainRoute> drains, String into) {
        List<Spot> tees = new ArrayList<>();
        for (DrainRoute route : drains) {
            FootingDrain drain = route.drain();
            if (drain.into().equals(into)) {
                tees.add(0, route.tee());
            }
        }
        return tees;
    }

    /** Where a pipe leaves that no drain feeds. */
    private static Spot usualSpot(Job job, List<DrainRoute> drains) {
        Side side = Side.SOUTH;
        if (!drains.isEmpty()) {
            side = drains.get(drains.size() - 1).tee().side();
        } else if (!job.walls().isEmpty()) {
            side = job.walls().get(job.walls().size() - 1).faces();
        }
        return new Spot(side, Spot.sideFeet(job.site().house(), side) / 2);
    }

    private static Side sideOf(Outlet outlet, List<Run> runs, Spot usual) {
        return runs.stream()
                .filter(run -> run.outlet().equals(outlet.label()))
                .map(run -> run.leaves().side())
                .findFirst()
                .orElse(usual.side());
    }
}
