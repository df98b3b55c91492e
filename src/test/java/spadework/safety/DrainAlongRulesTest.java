// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.ground.DrainLine;
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
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.samples.Samples;

/** A footing drain beside the footing of each wall that it passes, from its start to its end. */
class DrainAlongRulesTest {
    private static final Set<String> ALONG =
            Set.of("drain-over-footing", "drain-under-footing-along", "stone-under-thin-along");

    /** The footing's top lies at 92.50 and the pipe's shell is 0.01 ft thick: a quarter of an inch is 0.02 ft. */
    @ParameterizedTest(name = "start at {0}: {1}")
    @CsvSource({"92.52, false", "92.54, true", "93.00, true"})
    void aDrainOverTheTopOfTheFootingIsTold(double start, boolean expected) {
        WaterJob job = new WaterJob().drain(start, 92.2);

        assertThat(Checked.ids(job).contains("drain-over-footing")).isEqualTo(expected);
    }

    @Test
    void theFindingNamesWallStationAndFigures() {
        Finding found = Checked.only(new WaterJob().drain(93.01, 92.2), "drain-over-footing");

        assertThat(Checked.described(found))
                .contains("wall A, 0 ft from its start", "6 in over the top of the footing", "of stone", "lower");
    }

    /**
     * Three walls on footings of 8 in; the middle one's is as thick as it says, with the same top. There the drain has
     * fallen by up to 0.03 ft, and its shell takes 0.01 ft: at 7 in (0.083 ft less) 2 in of stone want 0.29 ft.
     */
    @ParameterizedTest(name = "footing of the middle wall {0} in, drain at {1} ft over the others'' bottom: {2}")
    @CsvSource({
        "8, 0.25, ",
        "7, 0.31, ",
        "7, 0.27, stone-under-thin-along",
        "4, 0.38, stone-under-thin-along",
        "4, 0.35, drain-under-footing-along"
    })
    void aThinnerFootingBetweenTheEndsIsSeen(double inches, double over, String expected) {
        List<String> found = Checked.findings(threeWalls(inches, over)).stream()
                .map(Finding::id)
                .filter(ALONG::contains)
                .toList();

        assertThat(found).isEqualTo(expected == null ? List.of() : List.of(expected));
    }

    /** From 92.60 down to 92.20 over one wall; a tee in the middle has a stretch on each side. */
    @Test
    void eachWallHasItsOwnStretchInTheDirectionOfTheWater() {
        assertThat(stretches(new WaterJob())).containsExactly("92.60 ft to 92.20 ft");
        assertThat(stretches(new WaterJob().drain(92.2, 92.6).teeAt(TeeAt.START)))
                .containsExactly("92.60 ft to 92.20 ft");
        assertThat(stretches(new WaterJob().drain(92.6, 92.5).teeInMiddle(92.2)))
                .containsExactly("92.60 ft to 92.20 ft", "92.50 ft to 92.20 ft");
        assertThat(stretches(new WaterJob().drain(null, 92.2))).isEmpty();
    }

    @Test
    void theStretchesOfThreeWallsFallOnFromOneToTheNext() {
        Job job = threeWalls(8, 0.25);
        FootingDrain drain = job.water().drains().get(0);
        var all = DrainLine.stretches(job, Books.standard(), drain);

        assertThat(all.keySet()).containsExactly("A", "B", "C");
        assertThat(all.get("A").get(0).to().feet())
                .isGreaterThan(all.get("B").get(0).from().feet());
        assertThat(all.get("B").get(0).to().feet())
                .isGreaterThan(all.get("C").get(0).from().feet());
    }

    @Test
    void drainsOfTheSamplesLieBesideTheirFootings() {
        Samples.papered()
                .forEach(sample -> assertThat(Samples.bid(sample).findings())
                        .as(sample.toString())
                        .extracting(Finding::id)
                        .doesNotContainAnyElementsOf(ALONG));
    }

    private static List<String> stretches(WaterJob water) {
        Job job = water.build();
        return DrainLine.stretches(job, Books.standard(), job.water().drains().get(0)).get("A").stream()
                .map(one -> one.from().levelText() + " to " + one.to().levelText())
                .toList();
    }

    /** A drain falling by an inch over all, that many feet over the bottom of the first footing where it starts. */
    private static Job threeWalls(double inches, double over) {
        Wall a = Jobs.wall();
        Wall b = beside(a, "B", Side.EAST)
                .withFooting(new Footing(Length.ofInches(inches), a.footing().projection()));
        Wall c = beside(a, "C", Side.SOUTH);
        double grade = 97.5;
        double bottom = grade - a.depthEnd().feet() - a.footing().thickness().feet();
        FootingDrain drain = new FootingDrain(
                "D1",
                List.of("A", "B", "C"),
                Optional.empty(),
                TeeAt.END,
                "M1",
                Optional.of(Length.ofFeet(bottom + over)),
                Optional.of(Length.ofFeet(bottom + over - 1.0 / 24)),
                Optional.empty(),
                Optional.of(Length.ofFeet(grade)),
                Optional.of(Length.ofFeet(grade)));
        Water w = Jobs.water();
        Water water = new Water(List.of(drain), w.mains(), w.roofLines(), w.downspouts(), w.outlets(), w.candidates());
        Wall first = a.withDepth(new WallDepth(a.depthEnd(), a.depthEnd()));
        return Jobs.withCorners(
                Jobs.job(Jobs.site(), water, first, b, c),
                List.of(
                        new Corner(new WallEnd("A", true), new WallEnd("B", false), CornerKind.OUTSIDE),
                        new Corner(new WallEnd("B", true), new WallEnd("C", false), CornerKind.OUTSIDE)));
    }

    private static Wall beside(Wall a, String label, Side faces) {
        return new Wall(
                label,
                "another wall",
                new WallPlace(faces, a.from(), a.length()),
                new WallDepth(a.depthEnd(), a.depthEnd()),
                a.footing(),
                a.surface(),
                List.of(),
                0,
                a.digging());
    }
}
