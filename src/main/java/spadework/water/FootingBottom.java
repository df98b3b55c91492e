// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;

/**
 * Level of the bottom of the footing where a drain starts and ends, from the ground's level there and the wall's depth.
 *
 * @param start empty where the ground's level at the start was not measured
 * @param end the same for the end
 */
public record FootingBottom(Optional<Worked> start, Optional<Worked> end) {

    public static FootingBottom of(Job job, FootingDrain drain) {
        List<Leg> legs = Leg.of(job, drain);
        Leg first = legs.get(0);
        Leg last = legs.get(legs.size() - 1);
        return new FootingBottom(
                drain.startGrade().map(grade -> bottom(job, first.wall(), grade, first.depthIn(), drain, "startGrade")),
                drain.endGrade().map(grade -> bottom(job, last.wall(), grade, last.depthOut(), drain, "endGrade")));
    }

    private static Worked bottom(Job job, Wall wall, Length grade, Length depth, FootingDrain drain, String key) {
        String at = "/walls/" + job.indexOfWall(wall.label());
        Given g = Given.of(
                "G",
                "level of the ground",
                grade.feet(),
                Unit.FOOT,
                "/water/drains/" + job.water().drains().indexOf(drain) + "/" + key);
        Given dt = Given.of("dt", "depth to the footing's top", depth.feet(), Unit.FOOT, at + "/depth");
        double thickness = wall.footing().thickness().feet();
        Given tf = Given.of("tf", "thickness of the footing", thickness, Unit.FOOT, at + "/footing/thickness");
        return Worked.of(
                "Fb",
                "level of the footing's bottom at wall " + wall.label(),
                grade.feet() - depth.feet() - thickness,
                Unit.FOOT,
                new Formula("G − dt − tf", "levels"),
                g,
                dt,
                tf);
    }
}
