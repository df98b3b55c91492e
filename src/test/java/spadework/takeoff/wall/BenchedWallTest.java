// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.TrenchEnds;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallPlace;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricebook.Books;
import spadework.trench.BankLine;
import spadework.trench.Benching;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * Soil beside banks in steps of 4 ft, the first upright at the toe, each further one behind a slope of 1 to 1
 * (29 CFR 1926 Subpart P App. B figure B-1.2, T-27, T-28), worked out by hand. The footing is 8 in thick and projects
 * 6 in; the trench's bottom is 2 ft wide.
 */
class BenchedWallTest {
    private static final double TF = 8.0 / 12;
    private static final TrenchEnds SHIELDED = new TrenchEnds(EndKind.SHIELDED, EndKind.SHIELDED, Optional.empty());

    /** @param start height of the trench at the wall's start, feet */
    private static Wall wall(double length, double start, double end, TrenchEnds ends, Protection protection) {
        Wall w = Jobs.wall();
        Digging d = w.digging();
        return new Wall(
                w.label(),
                w.where(),
                new WallPlace(w.place().faces(), w.place().from(), Length.ofFeet(length)),
                new WallDepth(Length.ofFeet(start - TF), Length.ofFeet(end - TF)),
                w.footing(),
                w.surface(),
                w.openings(),
                0,
                new Digging(d.access(), d.handShare(), Length.ofFeet(2), protection, ends));
    }

    private static TrenchEnds ends(EndKind start, EndKind end, double ramp) {
        return new TrenchEnds(start, end, Optional.of(Length.ofFeet(ramp)));
    }

    private static Job clay(Wall wall) {
        Job job = Jobs.job(wall);
        return job.withSite(Jobs.with(job.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.B)));
    }

    /** Cubic feet. */
    private static double dug(Wall wall) {
        return DugWall.bank(new Trenches(clay(wall), Books.standard()), wall).number() * 27;
    }

    /**
     * A section 6 ft high: 0.5 × 5 1/3 beside the footing's edge, 2 × 6 over the bottom, and from 4 to 6 ft a step
     * that stands 6 ft out, for the trench ends there. 3 ft and 4 ft high there is none yet: 7 1/6 and 9 2/3 sf. Over
     * 30 ft that go from 3 to 6 ft the step begins at 10 ft.
     */
    @ParameterizedTest(name = "{0} ft long, {1} to {2} ft high: {3} cf")
    @CsvSource({
        "20, 6, 6, 533.3333",
        "30, 3, 6, 447.5",
        "30, 6, 3, 447.5",
        "20, 4, 4, 193.3333",
        "30, 3, 4, 252.5",
    })
    void straightTrenchStepByStep(double length, double start, double end, double cubicFeet) {
        assertThat(dug(wall(length, start, end, SHIELDED, Protection.BENCHED))).isCloseTo(cubicFeet, within(0.001));
    }

    /** From 3 to 10 ft: steps begin at 4 and at 8 ft, so three stretches are told apart. */
    @Test
    void aStretchForEachStep() {
        Wall wall = wall(70, 3, 10, SHIELDED, Protection.BENCHED);
        Worked straight = BenchedWall.straight(WallMeasures.of(clay(wall), wall));
        assertThat(straight.formula()).isEqualTo("V1 + V2 + V3");
        // Sections: 7 1/6 at 3 ft; 9 2/3 at 4; 0.5 × 7 1/3 + 16 + 4 × 8 at 8; 0.5 × 9 1/3 + 20 + 32 + 2 × 10 at 10.
        double expected = 10 * (7.0 + 1.0 / 6 + 9 + 2.0 / 3) / 2
                + 40 * (9 + 2.0 / 3 + 3 + 2.0 / 3 + 48) / 2
                + 20 * (3 + 2.0 / 3 + 48 + 4 + 2.0 / 3 + 72) / 2;
        assertThat(straight.number()).isCloseTo(expected, within(1e-9));
    }

    /**
     * A free end 6 ft high is cut in the same steps: from 4 to 6 ft its face stands 6 ft out before a trench of
     * 2 + 6 ft over the bottom and 6 in beside the footing: 6 × 2 × 8.5. A ramp of 3 to 1 runs under the step as well:
     * 3 × (2 × 16 + 0.5 × (16 − 4/9)) ÷ 2, and beside it 3 × (8 + 0.5) × 20 ÷ 2.
     */
    @ParameterizedTest(name = "{0}, {1}, ramp of {2}: {3} cf more")
    @CsvSource({
        "OPEN, SHIELDED, 0, 102",
        "SHIELDED, OPEN, 0, 102",
        "OPEN, UNKNOWN, 3, 204",
        "RAMP, SHIELDED, 3, 314.6667",
        "SHIELDED, RAMP, 3, 314.6667",
        "SHIELDED, AGAINST_SOMETHING, 3, 0",
    })
    void freeEnds(EndKind start, EndKind end, double ramp, double cubicFeet) {
        double without = dug(wall(20, 6, 6, SHIELDED, Protection.BENCHED));
        double with = dug(wall(20, 6, 6, ends(start, end, ramp), Protection.BENCHED));
        assertThat(with - without).isCloseTo(cubicFeet, within(0.001));
    }

    /** A trench no higher than its first step stands upright, and so does its end. */
    @ParameterizedTest(name = "{0} ft high")
    @CsvSource({"3", "4"})
    void endUnderTheFirstStep(double height) {
        double without = dug(wall(20, height, 6, SHIELDED, Protection.BENCHED));
        assertThat(dug(wall(20, height, 6, ends(EndKind.OPEN, EndKind.SHIELDED, 0), Protection.BENCHED)))
                .isCloseTo(without, within(1e-9));
    }

    /** So does a corner: 3 × 2.5 × 2.5 less the footings' corner. Every face says at which end it stands. */
    @Test
    void cornerUnderTheFirstStep() {
        Wall wall = wall(20, 6, 6, ends(EndKind.OPEN, EndKind.RAMP, 3), Protection.BENCHED);
        WallMeasures measures = WallMeasures.of(clay(wall), wall);
        Worked corner = DugWall.volume("C1", Given.of("Hc", "depth", 3, Unit.FOOT, "test"), measures, measures);
        assertThat(corner.number()).isCloseTo(3 * 2.5 * 2.5 - 0.25 * TF, within(1e-9));
        assertThat(corner.formula()).isEqualTo("C1k1 − p1 × p2 × min(tf, Hc)");
        assertThat(DugWall.bank(new Trenches(clay(wall), Books.standard()), wall)
                        .inputs())
                .extracting(Working::name)
                .containsExactly("straight trench with its steps", "face in steps at the start", "ramp at the end");
    }

    /** Steps beside a slope of 1 to 1: 4 × 2.5 × (2.5 + 2) and 2 × 8.5 × (2.5 + 5), the slope half-way up. */
    @Test
    void cornerWithASlope() {
        Wall steps = wall(20, 6, 6, SHIELDED, Protection.BENCHED);
        Wall slope = wall(20, 6, 6, SHIELDED, Protection.SLOPED);
        Worked corner = DugWall.volume(
                "C1",
                Given.of("Hc", "depth", 6, Unit.FOOT, "test"),
                WallMeasures.of(clay(steps), steps, 0),
                WallMeasures.of(clay(slope), slope, 1));
        assertThat(corner.number()).isCloseTo(45 + 127.5 - 0.25 * TF, within(1e-9));
        assertThat(corner.inputs().get(0).inputs())
                .filteredOn(input -> input.symbol().startsWith("o"))
                .extracting(Working::source)
                .containsExactly(Benching.SOURCE, "half-way up");
    }

    /**
     * A corner 6 ft high. Under 4 ft both banks stand upright: 4 × 2.5 × 2.5. Over it two steps meet in 2 × 8.5 × 8.5,
     * a step and an upright bank in 2 × 8.5 × 2.5. The footings' corner of 6 by 6 in and 8 in stands there.
     */
    @ParameterizedTest(name = "beside a bank {0}: {1} cf")
    @CsvSource({"BENCHED, 169.3333", "UPRIGHT, 67.3333"})
    void corners(Protection other, double cubicFeet) {
        Wall first = wall(20, 6, 6, SHIELDED, Protection.BENCHED);
        Wall second = wall(20, 6, 6, SHIELDED, other);
        Given height = Given.of("Hc", "depth", 6, Unit.FOOT, "test");
        Worked corner = DugWall.volume(
                "C1", height, WallMeasures.of(clay(first), first, 0), WallMeasures.of(clay(second), second, 1));
        assertThat(corner.number()).isCloseTo(cubicFeet, within(0.001));
        assertThat(corner.formula()).isEqualTo("C1k1 + C1k2 − p1 × p2 × min(tf, Hc)");
        Worked turned = DugWall.volume(
                "C1", height, WallMeasures.of(clay(second), second, 1), WallMeasures.of(clay(first), first, 0));
        assertThat(turned.number()).isCloseTo(cubicFeet, within(0.001));
    }

    /** The printed term holds the steps under that height, and none under the first. */
    @Test
    void termOfTheSection() {
        BankLine line = new BankLine(1, 4, 10);
        assertThat(BenchedWall.term(line, 4, "H")).isEmpty();
        assertThat(BenchedWall.term(line, 4.1, "H")).isEqualTo(" + s × (max(min(8, H) − 4, 0) × min(8, Ht))");
        assertThat(BenchedWall.term(line, 8, "H")).isEqualTo(BenchedWall.term(line, 4.1, "H"));
        assertThat(BenchedWall.term(line, 9, "H"))
                .isEqualTo(" + s × (max(min(8, H) − 4, 0) × min(8, Ht) + max(min(12, H) − 8, 0) × min(12, Ht))");
    }
}
