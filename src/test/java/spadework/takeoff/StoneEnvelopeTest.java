// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Footing;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Protection;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.job.WallPlace;
import spadework.job.Water;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;

/**
 * The stone round a drain, 6 in over footing and pipe (IRC R405.1; F-04 to F-06). Upright banks, B 24 in, p 6 in,
 * pipe of 4.215 in outside (ASTM D3034).
 */
class StoneEnvelopeTest {
    private static final double CIRCLE = Math.PI * 4.215 * 4.215 / 4 / 144;

    private static Wall wall(String label, double feet, double thickness) {
        Wall w = Jobs.protectedBy(Jobs.wall(), Protection.UPRIGHT);
        return new Wall(
                label,
                label,
                new WallPlace(label.equals("A") ? Side.NORTH : Side.EAST, w.from(), Length.ofFeet(feet)),
                w.depth(),
                new Footing(Length.ofInches(thickness), Length.ofInches(6)),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
    }

    private static FootingDrain drain(String label, String... along) {
        return new FootingDrain(
                label,
                List.of(along),
                Optional.empty(),
                TeeAt.END,
                "M1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Job job(CornerKind kind, List<FootingDrain> drains, Wall a, Wall b) {
        Water w = Jobs.water();
        Job job =
                Jobs.job(Jobs.site(), new Water(drains, w.mains(), List.of(), List.of(), w.outlets(), List.of()), a, b);
        return Jobs.withCorners(job, List.of(new Corner(new WallEnd("A", true), new WallEnd("B", false), kind)));
    }

    private static double of(Job job, Measure measure, String label) {
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity ->
                        quantity.measure() == measure && quantity.label().equals(label))
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    /** Stone beside a footing, over it and less the pipe: B × h + p × (h − tf) − pipe, h being tf + 6 in. */
    private static double straight(double feet, double thickness) {
        double height = (thickness + 6) / 12;
        return feet * (2 * height + 0.5 * 0.5 - CIRCLE);
    }

    /**
     * The corner's square, 2.5 × 2.5 ft, is filled as high as the higher of the two stones, less the corner of the
     * first wall's footing, 0.5 × 0.5 ft by its thickness; an inside corner is counted once too often by as much.
     */
    @ParameterizedTest(name = "{0} corner of footings {1} and {2} in: stone {3} ft high")
    @CsvSource({"OUTSIDE, 8, 12, 1.5", "OUTSIDE, 12, 8, 1.5", "OUTSIDE, 8, 8, 1.16667", "INSIDE, 8, 8, 1.16667"})
    void cornerIsFilledAsHighAsTheHigherStone(CornerKind kind, double first, double second, double height) {
        Job job = job(kind, List.of(drain("D1", "A", "B")), wall("A", 40, first), wall("B", 20, second));
        double corner = 6.25 * height - 0.25 * first / 12;
        double sign = kind == CornerKind.OUTSIDE ? 1 : -1;
        assertThat(of(job, Measure.STONE, "A")).isCloseTo((straight(40, first) + sign * corner) / 27, within(1e-4));
        assertThat(of(job, Measure.STONE, "B")).isCloseTo(straight(20, second) / 27, within(1e-6));
    }

    /** A corner that no one drain goes round has no stone of its own. */
    @Test
    void cornerBetweenTwoDrainsIsNotFilled() {
        Job job = job(
                CornerKind.OUTSIDE, List.of(drain("D1", "A"), drain("D2", "B")), wall("A", 40, 8), wall("B", 20, 8));
        assertThat(of(job, Measure.STONE, "A")).isCloseTo(straight(40, 8) / 27, within(1e-6));
        Job half = job(CornerKind.OUTSIDE, List.of(drain("D1", "A")), wall("A", 40, 8), wall("B", 20, 8));
        assertThat(of(half, Measure.STONE, "A")).isCloseTo(straight(40, 8) / 27, within(1e-6));
        assertThat(of(half, Measure.STONE, "B")).isZero();
        assertThat(of(half, Measure.FABRIC, "B")).isZero();
    }

    /** Two drains along one wall: the first has the stone. */
    @Test
    void wallIsStonedOnce() {
        Job once = job(CornerKind.INSIDE, List.of(drain("D1", "A", "B")), wall("A", 40, 8), wall("B", 20, 8));
        Job twice = job(
                CornerKind.INSIDE,
                List.of(drain("D1", "A", "B"), drain("D2", "B")),
                wall("A", 40, 8),
                wall("B", 20, 8));
        assertThat(of(twice, Measure.STONE, "A")).isEqualTo(of(once, Measure.STONE, "A"));
        assertThat(of(twice, Measure.STONE, "B")).isEqualTo(of(once, Measure.STONE, "B"));
    }

    /** Fabric p + B + 6 in at wall and bank, 3.5 ft wide, with a lap of 12 in for each roll of 100 ft that is begun. */
    @ParameterizedTest(name = "{0} ft of wall: {1} laps")
    @CsvSource({"100, 1", "101, 2", "40, 1"})
    void fabricAndItsLaps(double feet, double laps) {
        Job job = job(CornerKind.INSIDE, List.of(drain("D1", "A")), wall("A", feet, 8), wall("B", 20, 8));
        assertThat(of(job, Measure.FABRIC, "A")).isCloseTo((feet + laps) * 3.5 / 9, within(1e-9));
    }

    /** A bank in steps stands upright beside a stone that ends under the first: fabric as wide as in a box. */
    @Test
    void fabricBesideABankInSteps() {
        Job job = DugTogether.clay(job(
                CornerKind.INSIDE,
                List.of(drain("D1", "A")),
                Jobs.protectedBy(wall("A", 40, 8), Protection.BENCHED),
                wall("B", 20, 8)));
        assertThat(of(job, Measure.FABRIC, "A")).isCloseTo(41 * 3.5 / 9, within(1e-9));
    }

    /** A section whose stone stays under the footing's top has none over its projection. */
    @ParameterizedTest(name = "{0} ft high: {1} sf")
    @CsvSource({"0.5, 1.0", "0.6666667, 1.3333333", "1.1666667, 2.5833333"})
    void sectionBesideAndOverTheFooting(double height, double area) {
        assertThat(StoneEnvelope.section(2, height, 0, 0.5, 8.0 / 12, 0)).isCloseTo(area, within(1e-6));
        assertThat(StoneEnvelope.section(2, height, 1, 0.5, 8.0 / 12, 0.35125))
                .isCloseTo(area + height * height / 2 - CIRCLE, within(1e-6));
    }

    /**
     * The pipe's underside stands 10 in over the bottom at the start and 2 in at the end: the stone is 20.215 in high
     * and falls to 14 in after 31.075 of 40 ft, 16.414 in in the mean. With a bank of 1 to 1 the fabric is 0.5 + 2 +
     * 1.3678 + 1 ft wide: 41 × 4.8678 ÷ 9 = 22.176 sy.
     */
    @Test
    void fabricFollowsTheMeanHeight() {
        double shell = (4.215 - 3.875) / 2;
        double bottom = 97 - 17.0 / 3;
        spadework.job.PlanHouse house = spadework.job.PlanHouse.of("40");
        Job job = house.job(
                spadework.job.SoilType.B,
                house.walls(5),
                Optional.of(Length.ofFeet(bottom + (10 + shell) / 12)),
                Optional.of(Length.ofFeet(bottom + (2 + shell) / 12)),
                Optional.of(Length.ofFeet(97)),
                Optional.of(Length.ofFeet(97)));
        assertThat(of(job, Measure.FABRIC, "W0")).isCloseTo(22.176, within(0.001));
    }
}
