// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import spadework.company.WorkCondition;
import spadework.job.Access;
import spadework.job.Job;
import spadework.job.Seepage;
import spadework.job.SolidRun;
import spadework.job.Texture;
import spadework.job.Wall;

/** The conditions under which work on a wall, or on the job as a whole, is done. */
public final class Conditions {
    /** Past this depth a thrower no longer reaches the surface in one throw (P-02, construction technology notes). */
    private static final double DEEP_FEET = 5;

    private static final Set<Texture> CLAYEY = EnumSet.of(
            Texture.CLAY, Texture.SILTY_CLAY, Texture.SILTY_CLAY_LOAM, Texture.CLAY_LOAM, Texture.SANDY_CLAY_LOAM);

    private Conditions() {}

    static List<WorkCondition> at(Job job, Wall wall) {
        List<WorkCondition> conditions = new ArrayList<>(everywhere(job));
        if (wall.deepestTrench().feet() > DEEP_FEET) {
            conditions.add(WorkCondition.DEEP);
        }
        if (wall.digging().access() == Access.HAND) {
            conditions.add(WorkCondition.NARROW);
        }
        return conditions;
    }

    /** In the trench of a run away from the house. */
    static List<WorkCondition> inTrench(Job job, SolidRun run) {
        List<WorkCondition> conditions = new ArrayList<>(everywhere(job));
        if (run.trench().depth().feet() > DEEP_FEET) {
            conditions.add(WorkCondition.DEEP);
        }
        return conditions;
    }

    /** Along several walls, by their lengths. */
    static List<Stretch> along(Job job, List<String> walls) {
        return byLength(walls.stream().map(job::getWall).toList(), wall -> at(job, wall), everywhere(job));
    }

    /** What slows the work of a section: a wall's, that of all drained walls, that on the ground beside the walls. */
    static List<Stretch> in(Job job, TakeoffSection section) {
        return switch (section.kind()) {
            case WALL -> Stretch.whole(at(job, job.getWall(section.label())));
            case DRAIN ->
                along(
                        job,
                        job.water().drains().stream()
                                .flatMap(drain -> drain.along().stream())
                                .toList());
            case GROUND -> byLength(job.walls(), wall -> onTheGround(job, wall), everywhere(job));
            case ROOF_WATER -> Stretch.whole(everywhere(job));
            case SETUP -> List.of();
        };
    }

    /** All that slows work beside any wall of the job: for work of which nobody knows yet where it will be. */
    public static List<Stretch> anywhere(Job job) {
        return Stretch.whole(job.walls().stream()
                .flatMap(wall -> at(job, wall).stream())
                .distinct()
                .toList());
    }

    private static List<WorkCondition> onTheGround(Job job, Wall wall) {
        return at(job, wall).stream()
                .filter(condition -> condition != WorkCondition.DEEP)
                .toList();
    }

    /** One stretch for each set of conditions; shares of length are exact where all walls have the same. */
    private static List<Stretch> byLength(
            List<Wall> walls, Function<Wall, List<WorkCondition>> conditions, List<WorkCondition> without) {
        Map<List<WorkCondition>, BigDecimal> lengths = new LinkedHashMap<>();
        BigDecimal all = BigDecimal.ZERO;
        for (Wall wall : walls) {
            BigDecimal length = BigDecimal.valueOf(wall.length().feet());
            lengths.merge(conditions.apply(wall), length, BigDecimal::add);
            all = all.add(length);
        }
        if (lengths.size() < 2) {
            return Stretch.whole(
                    lengths.isEmpty() ? without : lengths.keySet().iterator().next());
        }
        List<Stretch> stretches = new ArrayList<>();
        for (Map.Entry<List<WorkCondition>, BigDecimal> same : lengths.entrySet()) {
            stretches.add(new Stretch(same.getValue().divide(all, MathContext.DECIMAL128), same.getKey()));
        }
        return stretches;
    }

    static List<WorkCondition> everywhere(Job job) {
        Seepage seepage = job.site().soil().seepage();
        boolean wet = seepage == Seepage.DAMP || seepage == Seepage.FREE;
        return wet && CLAYEY.contains(job.site().soil().texture()) ? List.of(WorkCondition.WET_CLAY) : List.of();
    }
}
