// SPDX-License-Identifier: Apache-2.0
package spadework.safety.level;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.SolidRun;
import spadework.measure.Length;
import spadework.water.DrainGround;

/** Whether a drain and the main that takes its water agree about the ground over the place where they meet. */
public final class JoinRules {
    /**
     * What two levels of the ground there may differ by, feet: 2 in. Two readings of one place come within an inch, and
     * graded soil falls as much on the way from the wall to the pipe. Common practice, no source.
     */
    private static final double APART = 2.0 / 12;

    private static final double NOISE = 1e-6;

    private JoinRules() {}

    public static List<Finding> check(Job job) {
        List<Finding> found = new ArrayList<>();
        for (SolidRun main : job.water().mains()) {
            job.water().drains().stream()
                    .filter(drain -> drain.into().equals(main.label()))
                    .flatMap(drain -> ground(job, drain, main).stream())
                    .forEach(found::add);
        }
        return found;
    }

    private static Optional<Finding> ground(Job job, FootingDrain drain, SolidRun main) {
        return DrainGround.atTee(job, drain)
                .flatMap(atDrain -> main.startGrade()
                        .filter(atMain -> Math.abs(atDrain.feet() - atMain.feet()) > APART + NOISE)
                        .map(atMain -> differs(drain, atDrain, main, atMain)));
    }

    private static Finding differs(FootingDrain drain, Length atDrain, SolidRun main, Length atMain) {
        return new Finding(
                "join-ground-differs",
                Severity.MUST,
                main.label(),
                Map.of(
                        "drain", drain.label(),
                        "atDrain", atDrain.levelText(),
                        "atMain", atMain.levelText(),
                        "apart",
                                Length.ofFeet(Math.abs(atDrain.feet() - atMain.feet()))
                                        .text()),
                "common practice, no source");
    }
}
