// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.ground.FacingEnds;
import spadework.ground.FreeEnds;
import spadework.ground.Overlap;
import spadework.ground.Overlaps;
import spadework.ground.StoneProfile;
import spadework.ground.Strip;
import spadework.ground.Top;
import spadework.job.Corner;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.pricebook.PriceBook;

/** The trenches of all walls of a job, laid out once: their measures, where they meet, and the stone in them. */
public final class Trenches {
    private final Map<String, WallMeasures> measures = new LinkedHashMap<>();
    private final Map<String, DigBody> bodies = new HashMap<>();
    private final Map<String, DigBody> wells = new HashMap<>();
    private final Map<String, List<Corner>> corners = new HashMap<>();
    private final Map<Corner, String> pointers = new HashMap<>();
    private final Map<String, FootingDrain> drains = new HashMap<>();
    private final Map<String, StoneProfile> stone = new HashMap<>();
    private final Map<String, List<Overlap>> soilShared = new HashMap<>();
    private final Map<String, List<Overlap>> stoneShared = new HashMap<>();
    private final FreeEnds ends;

    public Trenches(Job job, PriceBook book) {
        for (int i = 0; i < job.walls().size(); i++) {
            Wall wall = job.walls().get(i);
            measures.put(wall.label(), WallMeasures.of(job, wall, i));
            bodies.put(wall.label(), DigBodies.wall(job.site(), wall));
            if (wall.windowWells() > 0) {
                wells.put(wall.label(), DigBodies.well(job.site(), wall));
            }
        }
        for (int i = 0; i < job.corners().size(); i++) {
            Corner corner = job.corners().get(i);
            corners.computeIfAbsent(corner.first().wall(), wall -> new ArrayList<>())
                    .add(corner);
            pointers.putIfAbsent(corner, "/corners/" + i);
        }
        this.ends = new FreeEnds(job);
        share(soilShared, measures.values().stream().map(WallMeasures::strip).toList(), job.corners());
        FacingEnds.of(job).forEach(shared -> add(soilShared, shared));
        for (FootingDrain drain : job.water().drains()) {
            lay(job, book, drain);
        }
    }

    private void lay(Job job, PriceBook book, FootingDrain drain) {
        List<Strip> strips = new ArrayList<>();
        Set<String> mine = new HashSet<>();
        StoneProfile.of(job, book, drain).forEach((wall, profile) -> {
            if (drains.putIfAbsent(wall, drain) == null) {
                stone.put(wall, profile);
                mine.add(wall);
                strips.add(measures.get(wall)
                        .strip(profile.stations().stream()
                                .map(station -> new Top(station.at(), station.height()))
                                .toList()));
            }
        });
        share(
                stoneShared,
                strips,
                job.corners().stream()
                        .filter(corner -> mine.contains(corner.first().wall())
                                && mine.contains(corner.second().wall()))
                        .toList());
    }

    private static void share(Map<String, List<Overlap>> shared, List<Strip> strips, List<Corner> corners) {
        Overlaps.of(strips, corners).forEach(overlap -> add(shared, overlap));
    }

    private static void add(Map<String, List<Overlap>> shared, Overlap overlap) {
        shared.computeIfAbsent(overlap.first(), wall -> new ArrayList<>()).add(overlap);
    }

    public WallMeasures at(Wall wall) {
        return measures.get(wall.label());
    }

    public WallMeasures at(String wall) {
        return measures.get(wall);
    }

    /** The corners that are counted with a wall: those that name it first. */
    public List<Corner> cornersOf(Wall wall) {
        return corners.getOrDefault(wall.label(), List.of());
    }

    /** Where the job names a corner. */
    public String pointer(Corner corner) {
        return pointers.get(corner);
    }

    public List<WallEnd> freeEndsOf(Wall wall) {
        return ends.of(wall);
    }

    /** The drain that runs along a wall. */
    public Optional<FootingDrain> drainAt(Wall wall) {
        return Optional.ofNullable(drains.get(wall.label()));
    }

    /** The stone at a wall along which a drain runs. */
    public StoneProfile stoneAt(String wall) {
        return stone.get(wall);
    }

    /** Ground that a wall's trench takes at grade, without its ends and corners; square feet. */
    public double areaAtGrade(Wall wall) {
        return bodies.get(wall.label()).areaAtGrade();
    }

    /** What the wall's window wells take beyond its trench. */
    public Optional<DigBody> wellsOf(Wall wall) {
        return Optional.ofNullable(wells.get(wall.label()));
    }

    public List<Overlap> soilSharedBy(Wall wall) {
        return soilShared.getOrDefault(wall.label(), List.of());
    }

    public List<Overlap> stoneSharedBy(Wall wall) {
        return stoneShared.getOrDefault(wall.label(), List.of());
    }
}
