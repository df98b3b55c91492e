// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.SumpPit;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.job.Water;
import spadework.measure.Length;

/** A wall 40 ft long with a bottom 2 ft wide; its drain runs straight into a basin. All of it is invented. */
class SumpLeadTest {

    /** From the bottom of the trench, 2 ft off the footing, to the hole. */
    @ParameterizedTest(name = "hole {0} ft from the footing: lead of {1} ft")
    @CsvSource({"10, 8", "2.5, 0.5", "2, ", "1, "})
    void itReachesFromTheTrenchToTheHole(double away, Double feet) {
        Optional<DigBody> lead = lead(job(Jobs.wall(), PitPlace.OUTSIDE, Optional.of(away), "93", "98"));
        assertThat(lead.map(DigBody::length)).isEqualTo(Optional.ofNullable(feet));
    }

    /** Ground less invert and 2 in of bed; from 5 ft the law asks for protection (29 CFR 1926.652(a)(1), T-13). */
    @ParameterizedTest(name = "invert at {0} ft under ground at 98 ft: {1} ft deep, {2}")
    @CsvSource({"93.16666666667, 5, SHIELDED", "93.17666666667, 4.99, UPRIGHT", "91, 7.1667, SHIELDED"})
    void itIsAsDeepAsItsLevelsMakeIt(String invert, double depth, Protection protection) {
        DigBody lead = lead(job(Jobs.wall(), PitPlace.OUTSIDE, Optional.of(10.0), invert, "98"))
                .orElseThrow();
        assertThat(lead.kind()).isEqualTo(BodyKind.LEAD);
        assertThat(lead.label()).isEqualTo("D1");
        assertThat(lead.deepest().feet()).isCloseTo(depth, within(1e-3));
        assertThat(lead.bank().protection()).isEqualTo(protection);
        assertThat(lead.depthFrom()).isEqualTo(DepthFrom.MEASURED);
        assertThat(lead.entered()).isTrue();
    }

    /** 5 ft to the footing's top and 8 in of footing. */
    @Test
    void withoutLevelsItIsAsDeepAsTheTrench() {
        DigBody lead = lead(job(Jobs.wall(), PitPlace.OUTSIDE, Optional.of(10.0), "", "98"))
                .orElseThrow();
        assertThat(lead.deepest().feet()).isCloseTo(5 + 8.0 / 12, within(1e-9));
        assertThat(lead.depthFrom()).isEqualTo(DepthFrom.USUAL);
    }

    @Test
    void whatLiesInTheSlopeOfTheWallIsDugOnce() {
        Job sloped = job(Jobs.wall(), PitPlace.OUTSIDE, Optional.of(10.0), "93", "98");
        RunOverlap once = RunOverlap.ofLead(sloped, drain(sloped)).orElseThrow();
        // A bank of 1 to 1 over 5 ft 8 in of trench; the lead's bed lies 5 ft 2 in down, its bottom is 1 ft wide.
        double low = 5 + 8.0 / 12 - (5 + 2.0 / 12);
        double high = 5 + 8.0 / 12;
        assertThat(once.overlap().volume()).isCloseTo(-(high * high - low * low) / 2, within(1e-6));
        assertThat(once.areaAtGrade()).isCloseTo(high, within(1e-9));
        Job shielded = job(
                Jobs.protectedBy(Jobs.wall(), Protection.SHIELDED), PitPlace.OUTSIDE, Optional.of(10.0), "93", "98");
        assertThat(RunOverlap.ofLead(shielded, drain(shielded))
                        .map(RunOverlap::areaAtGrade)
                        .orElse(0.0))
                .as("an upright bank takes none of it")
                .isZero();
    }

    @Test
    void nothingIsGuessed() {
        assertThat(lead(job(Jobs.wall(), PitPlace.OUTSIDE, Optional.empty(), "93", "98")))
                .as("nobody wrote how far off the basin stands")
                .isEmpty();
        assertThat(lead(job(Jobs.wall(), PitPlace.INSIDE, Optional.of(10.0), "93", "98")))
                .as("a basin in the house")
                .isEmpty();
        assertThat(lead(Jobs.job())).as("a drain into a main").isEmpty();
    }

    private static Optional<DigBody> lead(Job job) {
        return DigBodies.lead(job, drain(job));
    }

    private static FootingDrain drain(Job job) {
        return job.water().drains().get(0);
    }

    private static Job job(Wall wall, PitPlace place, Optional<Double> away, String invert, String grade) {
        SumpPit pit = new SumpPit(
                Optional.of(Length.ofInches(18)),
                Optional.of(Length.ofInches(24)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                place,
                away.map(Length::ofFeet),
                Optional.empty());
        Outlet sump = new Outlet(
                "S1",
                OutletKind.SUMP,
                "yard",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(pit),
                Optional.empty());
        FootingDrain drain = new FootingDrain(
                "D1",
                List.of("A"),
                Optional.empty(),
                TeeAt.END,
                "S1",
                level(invert),
                level(invert),
                Optional.empty(),
                level(grade),
                level(grade));
        Water water = new Water(List.of(drain), List.of(), List.of(), List.of(), List.of(sump), List.of());
        return Jobs.job(Jobs.site(), water, wall);
    }

    private static Optional<Length> level(String feet) {
        return feet.isEmpty() ? Optional.empty() : Optional.of(Length.ofFeet(Double.parseDouble(feet)));
    }
}
