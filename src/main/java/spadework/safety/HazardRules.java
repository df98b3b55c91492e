// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.Surface;
import spadework.job.Wall;

/** Old paint, dust from masonry, fumes from coatings. */
final class HazardRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        Job job = facts.job();
        List<Finding> found = new ArrayList<>();
        Optional<Integer> built = job.site().yearBuilt();
        if (built.isEmpty()) {
            found.add(must("year-unknown", "", "40 CFR 745 subpart E"));
        }
        found.addAll(LeadPaint.of(job));
        for (Wall wall : job.walls()) {
            Surface surface = wall.condition().surface();
            if (surface == Surface.UNKNOWN) {
                found.add(must("surface-unknown", wall.label(), Found.PRACTICE));
            }
        }
        if (!job.walls().isEmpty()) {
            found.add(must("dust-and-fumes", "", "29 CFR 1926.1153 (from memory); the maker's safety data sheet"));
        }
        return found;
    }
}
