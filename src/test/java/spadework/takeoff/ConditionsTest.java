// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.WorkCondition;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;

/** Which conditions slow the work of a wall, a trench, a drain or a section. */
class ConditionsTest {
    private static final PriceBook BOOK = Books.standard();

    private static Job soil(Texture texture, Seepage seepage) {
        return Jobs.job(Jobs.with(Jobs.site(), new Soil(texture, seepage, SoilType.C)), Jobs.water(), Jobs.deep(3));
    }

    /** Wet clay is clay in which water seeps or stands; what nobody looked for is not taken for it. */
    @ParameterizedTest(name = "{0}, {1}: wet clay {2}")
    @CsvSource({
        "CLAY, FREE, true",
        "CLAY, DAMP, true",
        "CLAY, NONE, false",
        "CLAY, UNKNOWN, false",
        "SILTY_CLAY, DAMP, true",
        "SILTY_CLAY_LOAM, DAMP, true",
        "CLAY_LOAM, DAMP, true",
        "SANDY_CLAY_LOAM, DAMP, true",
        "LOAM, FREE, false",
        "SAND, FREE, false"
    })
    void wetClay(Texture texture, Seepage seepage, boolean wet) {
        Job job = soil(texture, seepage);
        assertThat(Conditions.everywhere(job)).isEqualTo(wet ? List.of(WorkCondition.WET_CLAY) : List.of());
        assertThat(Conditions.at(job, job.walls().get(0)).contains(WorkCondition.WET_CLAY))
                .isEqualTo(wet);
        assertThat(Conditions.inTrench(job, job.water().mains().get(0)).contains(WorkCondition.WET_CLAY))
                .isEqualTo(wet);
    }

    /** What a section of no wall is slowed by: roof water by the soil alone, setting up by nothing. */
    @Test
    void conditionsOfSections() {
        Job job = Jobs.job(
                Jobs.with(Jobs.site(), new Soil(Texture.CLAY, Seepage.FREE, SoilType.C)), Jobs.water(), Jobs.deep(6));
        List<TakeoffSection> sections = Measuring.of(job, BOOK).sections();
        assertThat(stretches(job, sections, "A"))
                .containsExactly(new Stretch(BigDecimal.ONE, List.of(WorkCondition.WET_CLAY, WorkCondition.DEEP)));
        assertThat(stretches(job, sections, "drain"))
                .containsExactly(new Stretch(BigDecimal.ONE, List.of(WorkCondition.WET_CLAY, WorkCondition.DEEP)));
        assertThat(stretches(job, sections, "ground"))
                .containsExactly(new Stretch(BigDecimal.ONE, List.of(WorkCondition.WET_CLAY)));
        assertThat(stretches(job, sections, "roof water"))
                .containsExactly(new Stretch(BigDecimal.ONE, List.of(WorkCondition.WET_CLAY)));
        assertThat(stretches(job, sections, "setup")).isEmpty();
    }

    private static List<Stretch> stretches(Job job, List<TakeoffSection> sections, String label) {
        return Conditions.in(
                job,
                sections.stream()
                        .filter(section -> section.label().equals(label))
                        .findFirst()
                        .orElseThrow());
    }

    /** A thrower reaches the surface from 5 ft, not from deeper (P-02): 4 ft and a footing of 12 in are just 5 ft. */
    @ParameterizedTest(name = "{0} ft to the footing: deep {1}")
    @CsvSource({"4, false", "4.01, true"})
    void deepIsDeeperThanFiveFeet(double depth, boolean deep) {
        Wall w = Jobs.deep(depth);
        Wall thick = new Wall(
                w.label(),
                w.where(),
                w.place(),
                w.depth(),
                new spadework.job.Footing(Length.ofInches(12), Length.ofInches(6)),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
        Job job = Jobs.job(thick);
        assertThat(Conditions.at(job, thick).contains(WorkCondition.DEEP)).isEqualTo(deep);
        assertThat(Conditions.inTrench(job, trench(depth + 1)).contains(WorkCondition.DEEP))
                .isEqualTo(deep);
    }

    private static spadework.job.SolidRun trench(double depth) {
        spadework.job.SolidRun m = Jobs.main(40, 92.2, 91.4);
        return new spadework.job.SolidRun(
                m.label(),
                m.length(),
                m.item(),
                new spadework.job.TrenchSize(Length.ofFeet(1), Length.ofFeet(depth)),
                m.bends(),
                m.into(),
                m.startInvert(),
                m.endInvert(),
                m.startGrade(),
                m.endGrade(),
                m.beside());
    }

    /** 40 ft that a machine reaches and 10 ft by hand: four fifths and one fifth of the drain's work. */
    @Test
    void conditionsAlongADrainByLength() {
        Digging d = Jobs.wall().digging();
        Wall a = Jobs.deep(3);
        Wall b = new Wall(
                "B",
                "side",
                new spadework.job.WallPlace(spadework.job.Side.EAST, Length.ZERO, Length.ofFeet(10)),
                a.depth(),
                a.footing(),
                a.surface(),
                a.openings(),
                a.windowWells(),
                new Digging(Access.HAND, d.handShare(), d.bottomWidth(), d.protection()));
        Job job = Jobs.job(a, b);
        List<Stretch> along = Conditions.along(job, List.of("A", "B"));
        assertThat(along).extracting(Stretch::conditions).containsExactly(List.of(), List.of(WorkCondition.NARROW));
        assertThat(along.get(0).share()).isEqualByComparingTo("0.8");
        assertThat(along.get(1).share()).isEqualByComparingTo("0.2");
        assertThat(Conditions.along(job, List.of("B")))
                .containsExactly(new Stretch(BigDecimal.ONE, List.of(WorkCondition.NARROW)));
        assertThat(Conditions.along(job, List.of())).containsExactly(new Stretch(BigDecimal.ONE, List.of()));
    }
}
