// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Footing;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallEnd;
import spadework.job.WallPlace;
import spadework.job.Water;
import spadework.measure.Length;
import spadework.samples.Samples;

/** Two walls that meet have one level of the ground and one footing at their corner. */
class CornerRulesTest {

    /** Two readings of one place may differ by an inch: common practice, no source. */
    @ParameterizedTest(name = "{0} in of difference in depth: {1}")
    @CsvSource({"0, false", "1, false", "1.1, true", "-1, false", "-1.1, true", "4, true"})
    void depthsAtTheCornerAreTheSame(double inches, boolean expected) {
        List<Finding> found = found(job(inches, 0), "corner-depth-differs");

        assertThat(found).hasSize(expected ? 1 : 0);
        assertThat(found).allSatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.MUST);
            assertThat(finding.about()).isEqualTo("A");
            assertThat(finding.values()).containsEntry("other", "B");
        });
    }

    @Test
    void theFindingNamesBothWallsAndBothDepths() {
        Finding found = found(job(4, 0), "corner-depth-differs").get(0);
        double bottom =
                Jobs.wall().depthEnd().plus(Jobs.wall().footing().thickness()).feet();

        assertThat(Checked.described(found))
                .contains("wall A is " + Length.ofFeet(bottom).text())
                .contains("wall B is " + Length.ofFeet(bottom + 4.0 / 12).text())
                .contains("4 in apart");
    }

    /** Equal depths to the tops of footings of unequal thickness: the trenches have two bottoms. */
    @ParameterizedTest(name = "footing {0} in thicker: {1}")
    @CsvSource({"1, false", "2, true"})
    void aThickerFootingIsADeeperTrench(double inches, boolean expected) {
        assertThat(found(job(0, inches), "corner-depth-differs")).hasSize(expected ? 1 : 0);
    }

    /** Deeper at the end that lies away from the corner is no matter of the corner. */
    @Test
    void onlyTheEndsThatMeetAreCompared() {
        Wall other = side(0, 0);
        Job job = corner(other.withDepth(new WallDepth(other.depthStart(), Length.ofFeet(9))), List.of());

        assertThat(found(job, "corner-depth-differs")).isEmpty();
    }

    /** Drain DA ends at the corner, drain DB starts there; each says how high the ground lies. */
    @ParameterizedTest(name = "ground {0} at the end of one drain and {1} at the start of the other: {2}")
    @CsvSource({
        "97.50, 97.50, false",
        "97.50, 97.58, false",
        "97.50, 97.59, true",
        "97.59, 97.50, true",
        "97.50, , false"
    })
    void theGroundAtACornerHasOneLevel(Double end, Double start, boolean expected) {
        List<Finding> found = found(
                corner(side(0, 0), List.of(drain("A", null, end), drain("B", start, null))), "corner-ground-differs");

        assertThat(found).hasSize(expected ? 1 : 0);
        assertThat(found)
                .allSatisfy(finding ->
                        assertThat(Checked.described(finding)).contains("walls A and B", "97.59 ft", "97.50 ft"));
    }

    /** Whoever shot two levels need not be told of the depths that follow from them as well. */
    @Test
    void aCornerIsToldOnce() {
        Job job = corner(side(4, 0), List.of(drain("A", null, 97.5), drain("B", 97.9, null)));

        assertThat(found(job, "corner-ground-differs")).hasSize(1);
        assertThat(found(job, "corner-depth-differs")).isEmpty();
    }

    @Test
    void theSamplesAgreeAboutTheirCorners() {
        Samples.papered()
                .forEach(sample -> assertThat(Samples.bid(sample).findings().stream()
                                .map(Finding::id)
                                .filter(id -> id.startsWith("corner-ground") || id.startsWith("corner-depth")))
                        .as(sample.toString())
                        .isEmpty());
    }

    private static List<Finding> found(Job job, String id) {
        return Checked.findings(job).stream().filter(f -> f.id().equals(id)).toList();
    }

    private static Job job(double deeperInches, double thickerInches) {
        return corner(side(deeperInches, thickerInches), List.of());
    }

    private static Job corner(Wall side, List<FootingDrain> drains) {
        Water w = Jobs.water();
        Water water = new Water(drains, w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates());
        return Jobs.withCorners(
                Jobs.job(Jobs.site(), water, Jobs.wall(), side),
                List.of(new Corner(new WallEnd("A", true), new WallEnd("B", false), CornerKind.OUTSIDE)));
    }

    /** A wall B that begins as deep as wall A ends, or that many inches deeper or on a thicker footing. */
    private static Wall side(double deeperInches, double thickerInches) {
        Wall a = Jobs.wall();
        Length depth = a.depthEnd().plus(Length.ofInches(deeperInches));
        Footing footing = new Footing(
                a.footing().thickness().plus(Length.ofInches(thickerInches)),
                a.footing().projection());
        return new Wall(
                "B",
                "side wall",
                new WallPlace(Side.EAST, a.from(), a.length()),
                new WallDepth(depth, depth),
                footing,
                a.surface(),
                a.openings(),
                a.windowWells(),
                a.digging());
    }

    private static FootingDrain drain(String wall, Double startGrade, Double endGrade) {
        return new FootingDrain(
                "D" + wall,
                List.of(wall),
                Optional.empty(),
                TeeAt.END,
                "M1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(startGrade).map(Length::ofFeet),
                Optional.ofNullable(endGrade).map(Length::ofFeet));
    }
}
