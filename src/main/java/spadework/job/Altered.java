// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The job that comes of an alteration. */
public final class Altered {
    private Altered() {}

    /** The job with what is added, and without what is taken away. */
    public static Job of(Job job, Alteration alteration) {
        TakenAway gone = alteration.takenAway();
        List<Wall> walls =
                refinished(merged(job.walls(), gone.walls(), alteration.walls(), Wall::label), alteration.finishes());
        List<Corner> corners = new ArrayList<>(job.corners().stream()
                .filter(corner -> !gone.walls().contains(corner.first().wall())
                        && !gone.walls().contains(corner.second().wall()))
                .toList());
        corners.addAll(alteration.corners());
        List<ExtraItem> items = new ArrayList<>(job.items().stream()
                .filter(item ->
                        !gone.items().contains(item.code()) && !gone.walls().contains(item.section()))
                .toList());
        items.addAll(alteration.items());
        return new Job(
                job.head(),
                job.customer(),
                without(job.site(), gone.walls()),
                job.survey(),
                new Work(
                        walls,
                        corners,
                        water(job.water(), alteration),
                        restoration(job.restoration(), alteration),
                        job.protection(),
                        job.schedule()),
                job.pricing().withItems(items),
                job.contractTerms(),
                job.acceptedStops(),
                job.agreement(),
                job.notes());
    }

    private static Water water(Water water, Alteration alteration) {
        TakenAway gone = alteration.takenAway();
        return new Water(
                merged(water.drains(), gone.pipes(), alteration.drains(), FootingDrain::label),
                merged(water.mains(), gone.pipes(), alteration.mains(), SolidRun::label),
                merged(water.roofLines(), gone.pipes(), alteration.roofLines(), SolidRun::label),
                merged(water.downspouts(), gone.downspouts(), alteration.downspouts(), Downspout::label),
                merged(water.outlets(), gone.outlets(), alteration.outlets(), Outlet::label),
                water.candidates());
    }

    private static Restoration restoration(Restoration now, Alteration alteration) {
        Restoration more = alteration.restoration().map(now::plus).orElse(now);
        return alteration.takenAway().restoration().map(more::minus).orElse(more);
    }

    private static List<Wall> refinished(List<Wall> walls, List<NewFinish> finishes) {
        Map<String, Finish> byWall = new LinkedHashMap<>();
        finishes.forEach(finish -> byWall.put(finish.wall(), finish.finish()));
        return walls.stream()
                .map(wall -> Optional.ofNullable(byWall.get(wall.label()))
                        .map(wall::withFinish)
                        .orElse(wall))
                .toList();
    }

    /** Limits of the site are looked at from a wall, so they go with it. */
    private static Site without(Site site, Collection<String> walls) {
        return new Site(
                site.address(),
                site.yearBuilt(),
                site.space(),
                site.house(),
                site.benchmark(),
                site.insideFloor(),
                site.soil(),
                site.rain(),
                site.limits().stream()
                        .filter(limit -> !walls.contains(limit.wall()))
                        .toList(),
                site.locateTicket(),
                site.catchment(),
                site.testPits().stream()
                        .filter(pit -> pit.wall().filter(walls::contains).isEmpty())
                        .toList());
    }

    private static <T> List<T> merged(List<T> now, Collection<String> gone, List<T> added, Function<T, String> label) {
        Map<String, T> byLabel = new LinkedHashMap<>();
        now.stream().filter(one -> !gone.contains(label.apply(one))).forEach(one -> byLabel.put(label.apply(one), one));
        added.forEach(one -> byLabel.put(label.apply(one), one));
        return List.copyOf(byLabel.values());
    }
}
