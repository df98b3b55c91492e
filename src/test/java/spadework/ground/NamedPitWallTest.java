// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.PitPlace;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.WaterJob;

/** A sump's hole lies before the wall that the outlet's words name, as the plan draws it. */
class NamedPitWallTest {

    /** Wall W0, where the drain gives its water away, is sloped; W1 stands upright behind its shield. 1 ft off both. */
    @ParameterizedTest(name = "{0}: shares ground with wall {1}")
    @CsvSource(textBlock = """
            sump outside wall W0,         W0, 6
            sump outside wall W1,         W1, 1
            sumidero junto a la pared W1, W1, 1
            sump in the yard,             W0, 6
            sump outside wall Q,          W0, 6
            sump of wall W0 and wall W1,  W0, 6
            """)
    void groundFollowsTheWords(String words, String wall, double least) {
        Job job = JobPipes.drainedAlong(
                new WaterJob().sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0).build(), List.of("W0"));
        Job dug = JobPipes.withOutlet(
                        job,
                        outlet -> JobPipes.named(JobPipes.pitAt(outlet, PitPlace.OUTSIDE, Optional.of(1.0)), words))
                .withWalls(List.of(
                        PlanHouse.wall("W0", 40, 6, 6, 24, Protection.SLOPED),
                        PlanHouse.wall("W1", 20, 6, 6, 24, Protection.SHIELDED)));
        Overlap shared =
                PitOverlap.of(dug, dug.water().outlets().get(0)).orElseThrow().overlap();
        assertThat(shared.walls()).containsExactly(wall);
        assertThat(-shared.volume()).isGreaterThan(least);
        assertThat(RunOverlap.ofDischarge(dug, dug.water().outlets().get(0)).isPresent())
                .isTrue();
    }
}
