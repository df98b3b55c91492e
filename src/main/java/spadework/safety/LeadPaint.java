// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;

import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Job;
import spadework.job.Surface;

/** Walls whose coating may hold lead: painted or not known, on a house from before 1978 or of unknown age. */
public final class LeadPaint {
    private static final int BANNED = 1978;

    private LeadPaint() {}

    /** A finding for each such wall, in the order of the job's walls (40 CFR 745 subpart E). */
    public static List<Finding> of(Job job) {
        Optional<Integer> built = job.site().yearBuilt();
        if (built.filter(year -> year >= BANNED).isPresent()) {
            return List.of();
        }
        String age = built.map(year -> "built " + year).orElse("year not known");
        return job.walls().stream()
                .filter(wall -> wall.condition().surface() != Surface.BARE)
                .map(wall -> must("lead-paint", wall.label(), "40 CFR 745 subpart E", "built", age))
                .toList();
    }

    /**
     * What a change has to say of it. The pamphlet is owed before such work begins, once for the house (40 CFR
     * 745.84(a)): with such a wall in the contract it was handed over then.
     */
    public static List<Finding> added(Job before, Alteration change) {
        return of(before).isEmpty() ? of(Altered.of(before, change)) : List.of();
    }
}
