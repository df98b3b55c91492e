// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.Jobs;
import spadework.job.Outlet;
import spadework.job.Protection;
import spadework.job.Side;
import spadework.job.SolidRun;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.job.WallPlace;
import spadework.job.Water;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.place.OutlineSpot;
import spadework.samples.Samples;

/** A bank beside the house's own walls that nobody digs up. */
class PipeBankRulesTest {

    /** The main starts at 92.20 on 2 in of bedding; its trench is laid back from 5 ft on. */
    @ParameterizedTest(name = "{3}, ground {0}, outlet on the {1} side: {2}")
    @CsvSource({
        "97.05, other,    pipe-bank-under-wall,  ",
        "97.02, other,    ,                      ",
        "97.05, same,     ,                      ",
        "97.05, nowhere,  pipe-bank-way-unknown, ",
        "97.05, other,    ,                      SHIELDED",
        "97.05, other,    pipe-bank-under-wall,  SLOPED"
    })
    void aDeepBankPastAWallThatIsNotDugIsTold(double ground, String side, String expected, Protection typed) {
        Job job = new WaterJob()
                .drainGrade(ground, ground)
                .mainGrade(ground, 91.0)
                .build();
        Side own = job.walls().get(0).faces();
        Side other = Side.values()[(own.ordinal() + 1) % 4];
        String what = side.equals("same") ? word(own) : side.equals("other") ? word(other) : "swale";

        assertThat(ids(to(job, what, typed))).isEqualTo(expected == null ? List.of() : List.of(expected));
    }

    /** Where the walls of the other side are dug from end to end there is none for the bank to run under. */
    @Test
    void aSideThatIsDugFromEndToEndIsNotInTheWay() {
        Job job = new WaterJob().drainGrade(97.05, 97.05).mainGrade(97.05, 91.0).build();
        Wall a = job.walls().get(0);
        Side other = Side.values()[(a.faces().ordinal() + 1) % 4];
        Length whole = Length.ofFeet(OutlineSpot.sideFeet(job.site().house(), other));
        Job toOther = to(job, word(other), null);

        assertThat(ids(Jobs.job(toOther.site(), toOther.water(), a, on(a, other, whole))))
                .isEmpty();
        assertThat(ids(Jobs.job(toOther.site(), toOther.water(), a, on(a, other, whole.minus(Length.ofFeet(1))))))
                .containsExactly("pipe-bank-under-wall");
    }

    /** Its main leaves the dug north wall for the ditch in the east, round a corner that nobody digs. */
    @Test
    void theSampleWithADeepMainRoundItsCornerIsTold() {
        Job job = Samples.bid(Path.of("sample-quotes/maryland-buyer-of-65"))
                .dossier()
                .job();

        assertThat(ids(job)).containsExactly("pipe-bank-under-wall");
    }

    private static Wall on(Wall a, Side side, Length length) {
        return new Wall(
                "B",
                "another wall",
                new WallPlace(side, Length.ZERO, length),
                a.depth(),
                a.footing(),
                a.surface(),
                List.of(),
                0,
                a.digging());
    }

    private static String word(Side side) {
        return "swale on the " + side.name().toLowerCase(Locale.ROOT) + " side";
    }

    private static Job to(Job job, String what, Protection typed) {
        Water w = job.water();
        SolidRun main = w.mains().get(0);
        TrenchSize size = new TrenchSize(main.trench().width(), main.trench().depth(), Optional.ofNullable(typed));
        Outlet named = JobPipes.named(w.outlets().get(0), what);
        return job.withWater(new Water(
                w.drains(),
                List.of(main.withTrench(size)),
                w.roofLines(),
                w.downspouts(),
                List.of(named),
                w.candidates()));
    }

    private static List<String> ids(Job job) {
        return PipeBankRules.check(job).stream().map(Finding::id).toList();
    }
}
