// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.WorkCondition;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.ExtraItem;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.JobPricing;
import spadework.job.Jobs;
import spadework.job.Side;
import spadework.job.SolidRun;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallPlace;
import spadework.job.Water;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.takeoff.Measuring;
import spadework.takeoff.Stretch;
import spadework.takeoff.TakeoffLine;

/**
 * The slowdowns that an item declares are applied wherever their condition holds: in the demo company 1.15 in a trench
 * deeper than 5 ft and 1.25 where only hand tools reach.
 */
class SlowdownsTest {
    private static Wall wall(String label, double length, double depth, Access access) {
        Wall w = Jobs.wall();
        Digging d = w.digging();
        return new Wall(
                label,
                label,
                new WallPlace(Side.NORTH, w.from(), Length.ofFeet(length)),
                new WallDepth(Length.ofFeet(depth), Length.ofFeet(depth)),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                new Digging(access, d.handShare(), d.bottomWidth(), d.protection()));
    }

    private static Job job(Wall... walls) {
        Water w = Jobs.water();
        FootingDrain d = w.drains().get(0);
        FootingDrain along = new FootingDrain(
                "D1",
                List.of(walls).stream().map(Wall::label).toList(),
                d.item(),
                d.teeAt(),
                d.into(),
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
        return Jobs.job(
                Jobs.site(),
                new Water(List.of(along), w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates()),
                walls);
    }

    private static TakeoffLine line(Job job, String code) {
        return Measuring.of(job, Books.standard()).lines().stream()
                .filter(line -> line.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static double hours(Job job, String code) {
        return Pricing.known(job, Books.company(), Books.standard(), Measuring.of(job, Books.standard()))
                .lines()
                .stream()
                .filter(line -> line.code().equals(code))
                .mapToDouble(line -> line.crewHours().doubleValue())
                .sum();
    }

    /** PIPE-PERF4: 20 ft an hour. A trench is 8 in deeper than the wall states; at 5 ft it is not deeper than 5 ft. */
    @ParameterizedTest(name = "{0} ft deep, {1}: {2}")
    @CsvSource(textBlock = """
            4.33, MACHINE, 1
            4.34, MACHINE, 1.15
            4.33, HAND,    1.25
            5,    HAND,    1.4375
            """)
    void pipeInADrain(double depth, Access access, double factor) {
        Job job = job(wall("A", 40, depth, access));
        assertThat(hours(job, "PIPE-PERF4")).isCloseTo(40.0 / 20 * factor, within(1e-9));
    }

    /** 40 ft of deep wall and 20 ft of a shallow one that only hand tools reach: two thirds and one third. */
    @Test
    void eachWallSlowsItsShare() {
        Job job = job(wall("A", 40, 5, Access.MACHINE), wall("B", 20, 3, Access.HAND));
        assertThat(line(job, "PIPE-PERF4").stretches())
                .extracting(Stretch::conditions)
                .containsExactly(List.of(WorkCondition.DEEP), List.of(WorkCondition.NARROW));
        assertThat(hours(job, "PIPE-PERF4")).isCloseTo(60.0 / 20 * (1.15 * 2 + 1.25) / 3, within(1e-9));
    }

    @Test
    void wallsUnderTheSameConditionsAreOneStretch() {
        Job job = job(wall("A", 40, 5, Access.MACHINE), wall("B", 20, 6, Access.MACHINE));
        assertThat(line(job, "PIPE-PERF4").stretches())
                .containsExactly(new Stretch(java.math.BigDecimal.ONE, List.of(WorkCondition.DEEP)));
    }

    /** Grading along the walls is slowed where they are narrow, and never by the depth of a trench that is filled. */
    @Test
    void groundIsSlowedByItsAccess() {
        Job narrow = job(wall("A", 40, 6, Access.HAND));
        assertThat(line(narrow, "REGRADE").stretches())
                .extracting(Stretch::conditions)
                .containsExactly(List.of(WorkCondition.NARROW));
        assertThat(line(job(wall("A", 40, 6, Access.MACHINE)), "REGRADE").stretches())
                .extracting(Stretch::conditions)
                .containsExactly(List.of());
    }

    /** What is put in by hand is slowed as the work around it: PIPE-SEAL in a deep wall. */
    @Test
    void extraItemsAreSlowedByTheirSection() {
        Job plain = job(wall("A", 40, 6, Access.MACHINE));
        Job job = with(plain, new ExtraItem("PIPE-SEAL", Optional.of(java.math.BigDecimal.ONE), "A", "test"));
        assertThat(line(job, "PIPE-SEAL").stretches())
                .extracting(Stretch::conditions)
                .containsExactly(List.of(WorkCondition.DEEP));
        Job setup = with(plain, new ExtraItem("PIPE-SEAL", Optional.of(java.math.BigDecimal.ONE), "setup", "test"));
        assertThat(line(setup, "PIPE-SEAL").stretches()).isEmpty();
        Job drain = with(plain, new ExtraItem("PIPE-SEAL", Optional.of(java.math.BigDecimal.ONE), "drain", "test"));
        assertThat(line(drain, "PIPE-SEAL").stretches())
                .extracting(Stretch::conditions)
                .containsExactly(List.of(WorkCondition.DEEP));
    }

    @ParameterizedTest(name = "main {0} ft deep: deep {1}")
    @CsvSource({"5, false", "5.01, true"})
    void mainInADeepTrench(double depth, boolean expected) {
        Job plain = job(wall("A", 40, 3, Access.MACHINE));
        SolidRun m = plain.water().mains().get(0);
        Water w = plain.water();
        Job job = plain.withWater(new Water(
                w.drains(),
                List.of(new SolidRun(
                        m.label(),
                        m.length(),
                        m.item(),
                        new TrenchSize(Length.ofFeet(1), Length.ofFeet(depth)),
                        m.bends(),
                        m.into(),
                        m.startInvert(),
                        m.endInvert(),
                        m.startGrade(),
                        m.endGrade(),
                        Optional.empty())),
                w.roofLines(),
                w.downspouts(),
                w.outlets(),
                w.candidates()));
        assertThat(line(job, "MAIN-4").stretches().get(0).conditions().contains(WorkCondition.DEEP))
                .isEqualTo(expected);
    }

    private static Job with(Job j, ExtraItem item) {
        return new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                j.work(),
                new JobPricing(List.of(item), j.priceChanges(), j.taxClass()),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
    }
}
