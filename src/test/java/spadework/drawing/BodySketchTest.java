// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.drawing.section.BodySketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Jobs;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Site;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.SolidRun;
import spadework.job.Texture;
import spadework.job.TrenchSize;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.wording.Language;

/** A trench away from the walls, cut across: its figures stand on it, and its outline is to scale. */
class BodySketchTest {

    private static Site site(SoilType type) {
        return Jobs.with(Jobs.site(), new Soil(Texture.CLAY, Seepage.NONE, type));
    }

    private static DigBody main(double depth, SoilType soil, Optional<Protection> protection) {
        SolidRun run = new SolidRun(
                "M1",
                Length.ofFeet(40),
                Optional.empty(),
                new TrenchSize(Length.ofFeet(1), Length.ofFeet(depth), protection),
                0,
                "O1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return DigBodies.main(Jobs.job().withSite(site(soil)), run);
    }

    /** 29 CFR 1926.652(a)(1), App. B Table B-1: laid back from 5 ft, 1 to 1 in Type B, 1½ to 1 in Type C. */
    @ParameterizedTest(name = "{0} ft in {1}, {2}: {3}, {4} at grade")
    @CsvSource(textBlock = """
            4,  B, ,         Upright bank, 1 ft
            6,  B, ,         Bank laid back 1 : 1, 13 ft
            6,  C, ,         Bank laid back 1.5 : 1, 19 ft
            6,  B, SHIELDED, Shield between upright banks, 1 ft
            9,  B, BENCHED,  'Bank in steps up to 4 ft, 1 : 1', 19 ft
            20, C, ,         Bank laid back 1.5 : 1, 61 ft
            """)
    void figuresAndBankAreNamed(double depth, SoilType soil, Protection protection, String bank, String wide) {
        Scene scene = BodySketch.of(main(depth, soil, Optional.ofNullable(protection)), Language.ENGLISH);
        String drawn = String.join(" ", PlanLabels.texts(scene));
        String deep = Length.ofFeet(depth).text();

        assertThat(drawn).contains("Section at main M1", bank, deep, wide, "at least 2 ft", "depth as typed");
        assertThat(scene.alternative()).contains("trench of main M1", bank, deep, wide, "at least 2 ft");
        assertThat(drawn).doesNotContain("an engineer designs it");
    }

    /** 29 CFR 1926.652(b), App. F: more than 20 feet. */
    @Test
    void overTwentyFeetAnEngineerDesignsIt() {
        Scene scene = BodySketch.of(main(20.1, SoilType.B, Optional.empty()), Language.ENGLISH);
        assertThat(scene.alternative()).contains("over 20 ft an engineer designs it");
    }

    /** The lines of the ground: bottom and banks are apart as the figures say, in one scale across and down. */
    @ParameterizedTest(name = "{0} ft, {1}")
    @CsvSource({"4, ", "6, ", "9, BENCHED", "6, SHIELDED", "12, ", "20, "})
    void outlineIsToScale(double depth, Protection protection) {
        DigBody body = main(depth, SoilType.B, Optional.ofNullable(protection));
        List<Line> ground = BodySketch.of(body, Language.ENGLISH).shapes().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .filter(line -> line.role() == Role.GROUND && line.weight() == Shape.Weight.MEDIUM)
                .toList();
        double top = ground.stream()
                .mapToDouble(line -> Math.min(line.y1(), line.y2()))
                .min()
                .orElseThrow();
        double foot = ground.stream()
                .mapToDouble(line -> Math.max(line.y1(), line.y2()))
                .max()
                .orElseThrow();
        Line bottom = ground.stream()
                .filter(line -> line.y1() == foot && line.y2() == foot)
                .findFirst()
                .orElseThrow();
        double scale = (foot - top) / depth;
        assertThat(Math.abs(bottom.x2() - bottom.x1())).isCloseTo(scale * 1, within(1e-6));
        double left = ground.stream()
                .filter(line -> line.y1() == top && line.y2() == top)
                .mapToDouble(line -> Math.max(line.x1(), line.x2()))
                .min()
                .orElseThrow();
        double middle = (bottom.x1() + bottom.x2()) / 2;
        assertThat(2 * (middle - left))
                .isCloseTo(scale * BodySketch.widthAtGrade(body).feet(), within(1e-6));
    }

    /** Everything lies on the sheet and no words lie on others. */
    @ParameterizedTest(name = "{0} ft, {1}")
    @CsvSource({"4, ", "6, ", "9, BENCHED", "6, SHIELDED", "20, ", "8, "})
    void wordsStandClear(double depth, Protection protection) {
        Scene scene = BodySketch.of(main(depth, SoilType.C, Optional.ofNullable(protection)), Language.ENGLISH);
        assertThat(PlanLabels.faults(scene)).isEmpty();
    }

    /** The hole for a basin outside: from grade past the drain's invert by its depth and 4 in of stone. */
    @Test
    void holeOfASump() {
        DigBody hole =
                DigBodies.of(new WaterJob()
                                .sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0)
                                .pitAt(PitPlace.OUTSIDE)
                                .build())
                        .stream()
                        .filter(body -> body.kind() == BodyKind.SUMP_PIT)
                        .findFirst()
                        .orElseThrow();
        Scene scene = BodySketch.of(hole, Language.ENGLISH);
        assertThat(scene.alternative())
                .contains("hole of sump pit O1", hole.deepest().text(), "3 ft 6 in wide");
    }
}
