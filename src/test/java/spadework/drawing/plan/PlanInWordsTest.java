// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.PlanJob;
import spadework.drawing.RandomJobs;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;

class PlanInWordsTest {

    @Test
    void theWordsTellWhatTheDrawingShows() {
        assertThat(PlanSketch.of(PlanJob.corner()).alternative())
                .isEqualTo(""
                        + "Plan of the house seen from above, north up."
                        + " The house is 40 ft from east to west and 28 ft from north to south."
                        + " Wall A, the north wall, faces north. We dig along 40 ft of it."
                        + " Wall B, the east wall, faces east. We dig along 28 ft of it."
                        + " Footing drain D1 runs along walls A and B and empties from its end into M1."
                        + " It has a cleanout at its high end."
                        + " Solid pipe M1, 60 ft long, leads to Swale."
                        + " Roof water pipe R1, 60 ft long, carries the water of downspouts DS1 and DS2 to Swale."
                        + " At grade the dug ground is 12 ft 6 in wide along wall A,"
                        + " 12 ft 6 in wide along wall B, 1 ft wide along solid pipe M1,"
                        + " and 1 ft wide along roof water pipe R1."
                        + " Swale is an outlet to daylight: the low ground below the garden."
                        + " Which side of the house it is on is not written down."
                        + " Tree 9 ft before wall A."
                        + " Lot line 22 ft before wall B.");
    }

    @Test
    void aLabelThatSaysItsKindIsNotNamedTwice() {
        Job job = PlanJob.house(40, 28)
                .wall("Back wall", Side.NORTH, 0, 40)
                .drain("Footing drain", TeeAt.END, "Sump", "Back wall")
                .outlet("Sump", OutletKind.SUMP)
                .job();

        assertThat(PlanSketch.of(job).alternative())
                .contains(" Back wall, the north wall, faces north")
                .contains(" Footing drain runs along Back wall and empties from its end into Sump.");
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyWallLengthPipeAndOutletIsNamed(long seed) {
        Job job = RandomJobs.of(seed);
        String words = PlanSketch.of(job).alternative();

        job.walls()
                .forEach(wall -> assertThat(words)
                        .contains(wall.label() + ", " + wall.where())
                        .contains(wall.length().text()));
        job.water().drains().forEach(drain -> assertThat(words).contains(drain.label() + " runs along"));
        job.water().mains().forEach(main -> assertThat(words).contains(main.label() + ", 60 ft long, leads to"));
        job.water().roofLines().forEach(line -> assertThat(words).contains(line.label() + ", 60 ft long, carries"));
        job.water().downspouts().forEach(downspout -> assertThat(words).contains(downspout.label()));
        job.water().outlets().forEach(outlet -> assertThat(words).contains(outlet.label() + " is "));
    }

    private static LongStream seeds() {
        return LongStream.range(0, 50);
    }
}
