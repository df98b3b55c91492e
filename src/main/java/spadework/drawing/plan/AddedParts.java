// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Alteration;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.job.Water;

/**
 * Walls and pipes that are drawn apart from the rest: those of options, or those that a change order adds.
 *
 * @param labels of walls, drains and solid pipes
 * @param wallName what the key calls such a wall
 * @param pipeName what the key calls such a pipe
 * @param dugName what the key calls the ground that is dug for them alone
 * @param sentence what the words say of one, as {@code Optional:}
 */
public record AddedParts(Set<String> labels, String wallName, String pipeName, String dugName, String sentence) {
    /** Nothing is drawn apart. */
    static final AddedParts NONE = new AddedParts(Set.of(), "", "", "", "");

    public AddedParts {
        labels = Set.copyOf(labels);
    }

    static AddedParts optional(Job job, Job whole, PlanWords words) {
        return of(more(job, whole), "optional", words);
    }

    static AddedParts added(Job before, Job after, PlanWords words) {
        return of(more(before, after), "added", words);
    }

    private static AddedParts of(Set<String> labels, String how, PlanWords words) {
        return new AddedParts(
                labels,
                words.meaning(how + "-wall"),
                words.meaning(how + "-pipe"),
                words.meaning(how + "-dug"),
                words.sentence(how));
    }

    boolean has(String label) {
        return labels.contains(label);
    }

    /** How a wall's line is drawn. */
    Role wall(String label) {
        return has(label) ? Role.EXTRA_WALL : Role.WALL;
    }

    /** How a pipe's line is drawn. */
    Role pipe(String label, Role usual) {
        return has(label) ? Role.EXTRA_PIPE : usual;
    }

    /**
     * The job with every wall and pipe that an option would add under a label of its own. What an option would put in
     * another's place is left out: both cannot be drawn at once.
     */
    static Job with(Job job, List<Alteration> options) {
        Water water = job.water();
        List<Wall> walls = new ArrayList<>(job.walls());
        // An optional drain comes before the others: the last one says where the main leaves the house.
        List<FootingDrain> drains = new ArrayList<>();
        List<SolidRun> mains = new ArrayList<>(water.mains());
        List<SolidRun> roofLines = new ArrayList<>(water.roofLines());
        List<Downspout> downspouts = new ArrayList<>(water.downspouts());
        List<Outlet> outlets = new ArrayList<>(water.outlets());
        for (Alteration option : options) {
            add(walls, option.walls(), Wall::label);
            option.drains().stream()
                    .filter(drain ->
                            water.drains().stream().noneMatch(one -> one.label().equals(drain.label())))
                    .forEach(drain -> add(drains, List.of(drain), FootingDrain::label));
            add(mains, option.mains(), SolidRun::label);
            List<SolidRun> fresh = fresh(roofLines, option.roofLines(), SolidRun::label);
            roofLines.addAll(fresh);
            add(outlets, option.outlets(), Outlet::label);
            add(
                    downspouts,
                    option.downspouts().stream()
                            .filter(spout ->
                                    fresh.stream().anyMatch(line -> line.label().equals(spout.into())))
                            .toList(),
                    Downspout::label);
        }
        drains.addAll(water.drains());
        return job.withWalls(walls)
                .withWater(new Water(drains, mains, roofLines, downspouts, outlets, water.candidates()));
    }

    private static <T> void add(List<T> all, List<T> more, Function<T, String> label) {
        all.addAll(fresh(all, more, label));
    }

    private static <T> List<T> fresh(List<T> all, List<T> more, Function<T, String> label) {
        return more.stream()
                .filter(one -> all.stream().noneMatch(had -> label.apply(had).equals(label.apply(one))))
                .toList();
    }

    private static Set<String> more(Job before, Job after) {
        Set<String> labels = new HashSet<>(labels(after));
        labels.removeAll(labels(before));
        return labels;
    }

    private static Set<String> labels(Job job) {
        Set<String> labels = new HashSet<>();
        job.walls().forEach(wall -> labels.add(wall.label()));
        job.water().drains().forEach(drain -> labels.add(drain.label()));
        job.water().mains().forEach(run -> labels.add(run.label()));
        job.water().roofLines().forEach(run -> labels.add(run.label()));
        return labels;
    }
}
