// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.job.TrenchEnds;
import spadework.job.Wall;
import spadework.job.WallPlace;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;

/** Volumes of groups of walls against values that were integrated numerically outside the project, to 0.01 cy. */
class GroundVolumesTest {

    /** dt 5 ft, tf 8 in, p 6 in, B 24 in, s 1. */
    @ParameterizedTest(name = "{0}: {1} cy")
    @CsvSource(textBlock = """
            # walls all round a 30 × 20 ft house
            30 R 20 R 30 R 20 R,                         136.801
            # with a bump-out 4 ft wide and 3 ft deep in one long side
            13 L 3 R 4 R 3 L 13 R 20 R 30 R 20 R,        143.443
            """)
    void allRoundAHouse(String plan, double cubicYards) {
        PlanHouse house = PlanHouse.of(plan);
        Job job = house.job(SoilType.B, house.walls(5));
        assertThat(sum(job, Measure.DUG)).isCloseTo(cubicYards, within(0.005));
        assertThat(sum(job, Measure.BACKFILL))
                .isCloseTo(cubicYards - sum(job, Measure.STONE) - pipe(job), within(0.005));
    }

    /** A return of 3 ft between an inside and an outside corner lies within what its neighbors dig. */
    @Test
    void aShortWallBearsANegativeShare() {
        PlanHouse house = PlanHouse.of("13 L 3 R 4 R 3 L 13 R 20 R 30 R 20 R");
        Job job = house.job(SoilType.C, house.walls(6));
        double short3 = of(job, Measure.DUG, "W3");
        assertThat(short3).isNegative();
        assertThat(of(job, Measure.BACKFILL, "W3")).isNegative();
    }

    /**
     * Stone along 40 ft, B 24 in, p 6 in, tf 8 in, pipe of 4.215 in, less the pipe. The pipe's underside stands so high
     * over the bottom at the start, in inches, and at the end.
     */
    @ParameterizedTest(name = "{0} bank, from {1} to {2} in: {3} cy")
    @CsvSource(textBlock = """
            UPRIGHT, 10, 2, 4.4287
            SLOPED,  10, 2, 5.8361
            SLOPED,  2,  2, 4.6918
            """)
    void stoneFollowsThePipe(Protection protection, double from, double to, double cubicYards) {
        PlanHouse house = PlanHouse.of("40");
        List<Wall> walls = List.of(PlanHouse.wall("W0", 40, 5, 5, 24, protection));
        double shell = (4.215 - 3.875) / 2;
        // grade 97 ft, footing's bottom 5 ft 8 in below it
        double bottom = 97 - 17.0 / 3;
        Job job = house.job(
                SoilType.B,
                walls,
                level(bottom + (from + shell) / 12),
                level(bottom + (to + shell) / 12),
                level(97),
                level(97));
        assertThat(sum(job, Measure.STONE)).isCloseTo(cubicYards, within(5e-5));
    }

    /** B 24 in, p 6 in, tf 8 in, s 1, H 5 ft 8 in: 3.7290 cy each. */
    @ParameterizedTest(name = "{0} and {1}: {2} ends of 3.7290 cy")
    @CsvSource({
        "OPEN, OPEN, 2",
        "UNKNOWN, OPEN, 2",
        "SHIELDED, OPEN, 1",
        "AGAINST_SOMETHING, SHIELDED, 0",
        "RAMP, AGAINST_SOMETHING, 4"
    })
    void endsInTheOpenAreSloped(EndKind start, EndKind end, double ends) {
        TrenchEnds both = new TrenchEnds(start, end, Optional.of(Length.ofFeet(4)));
        Job job = Jobs.job(Jobs.with(
                Jobs.wall(), new Digging(Access.MACHINE, Percent.ZERO, Length.ofInches(24), Protection.SLOPED, both)));
        assertThat(sum(job, Measure.DUG)).isCloseTo(44.2798 + ends * 3.7290, within(0.0005));
    }

    /** Two walls in one line share their trench where they meet, so neither ends there. */
    @Test
    void aWallThatGoesOnHasNoEnd() {
        Wall first = Jobs.wall();
        Wall second = new Wall(
                "B",
                first.where(),
                new WallPlace(first.faces(), Length.ofFeet(40), first.length()),
                first.depth(),
                first.footing(),
                first.surface(),
                first.openings(),
                first.windowWells(),
                first.digging());
        assertThat(of(Jobs.job(first, second), Measure.DUG, "A")).isCloseTo(44.2798 + 3.7290, within(0.0005));
        assertThat(of(Jobs.job(first, second), Measure.DUG, "B")).isCloseTo(44.2798 + 3.7290, within(0.0005));
    }

    private static Optional<Length> level(double feet) {
        return Optional.of(Length.ofFeet(feet));
    }

    private static double pipe(Job job) {
        double feet =
                job.walls().stream().mapToDouble(wall -> wall.length().feet()).sum();
        return Math.PI * 4.215 * 4.215 / 4 / 144 * feet / 27;
    }

    private static double of(Job job, Measure measure, String label) {
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity ->
                        quantity.measure() == measure && quantity.label().equals(label))
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    private static double sum(Job job, Measure measure) {
        return job.walls().stream()
                .mapToDouble(wall -> of(job, measure, wall.label()))
                .sum();
    }
}
