package spadework.takeoff;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import spadework.company.WorkCondition;
import spadework.job.Access;
import spadework.job.Job;
import spadework.job.Seepage;
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

    static List<WorkCondition> everywhere(Job job) {
        Seepage seepage = job.site().soil().seepage();
        boolean wet = seepage == Seepage.DAMP || seepage == Seepage.FREE;
        return wet && CLAYEY.contains(job.site().soil().texture()) ? List.of(WorkCondition.WET_CLAY) : List.of();
    }
}
