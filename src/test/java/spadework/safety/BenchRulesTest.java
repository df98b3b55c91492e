// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.Job;
import spadework.job.JobPipes;
import spadework.job.Jobs;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.SolidRun;
import spadework.job.Texture;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;

/** Banks in steps: what they ask for, and in which soil they are never cut (29 CFR 1926 Subpart P App. B, T-27). */
class BenchRulesTest {

    private static Job job(SoilType type, Texture texture, Seepage seepage, double trench) {
        Wall wall = Jobs.protectedBy(Jobs.deep(trench - 8.0 / 12), Protection.BENCHED);
        return Jobs.job(Jobs.with(Jobs.site(), new Soil(texture, seepage, type)), Jobs.water(), wall);
    }

    private static List<Finding> about(Job job, String start) {
        return Checked.findings(job).stream()
                .filter(finding -> finding.id().startsWith(start))
                .toList();
    }

    @ParameterizedTest(name = "type {0}, {1}, seepage {2}: {3}")
    @CsvSource({
        "B, CLAY, NONE, bench-back, MUST",
        "A, CLAY, DAMP, bench-back, MUST",
        "C, CLAY, NONE, bench-in-type, STOP",
        "NOT_CLASSED, CLAY, NONE, bench-in-type, STOP",
        "B, SANDY_LOAM, NONE, bench-in-texture, STOP",
        "B, UNKNOWN, NONE, bench-in-texture, STOP",
        "B, CLAY, FREE, bench-in-water, STOP",
        "B, CLAY, UNKNOWN, bench-in-water, STOP"
    })
    void stepsOnlyInSoilThatBearsThem(SoilType type, Texture texture, Seepage seepage, String id, Severity severity) {
        List<Finding> found = about(job(type, texture, seepage, 6), "bench-");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).id()).isEqualTo(id);
        assertThat(found.get(0).severity()).isEqualTo(severity);
        assertThat(found.get(0).values()).containsEntry("at", "wall A");
        boolean sloped = severity == Severity.STOP;
        assertThat(about(job(type, texture, seepage, 6), "slope-back")).hasSize(sloped ? 1 : 0);
    }

    /** 29 CFR 1926.652(a)(1): from 5 ft; up to 4 ft there is no step to cut, so nothing is asked of the soil. */
    @ParameterizedTest(name = "{0} ft deep: {1}, in Type C {2}")
    @CsvSource({
        "4, upright-shallow, upright-shallow",
        "4.01, upright-shallow, bench-in-type",
        "4.99, upright-shallow, bench-in-type",
        "5, bench-back, bench-in-type"
    })
    void depths(double depth, String inClay, String inTypeC) {
        assertThat(about(job(SoilType.B, Texture.CLAY, Seepage.NONE, depth), inClay))
                .hasSize(1);
        assertThat(about(job(SoilType.C, Texture.CLAY, Seepage.NONE, depth), inTypeC))
                .hasSize(1);
    }

    @Test
    void figuresOfTheSteps() {
        Finding found = about(job(SoilType.B, Texture.CLAY, Seepage.NONE, 6), "bench-back")
                .get(0);
        assertThat(found.values())
                .containsEntry("rise", "4 ft")
                .containsEntry("run", "1")
                .containsEntry("out", "6 ft")
                .containsEntry("depth", "6 ft");
    }

    /** A main, a roof line: whatever people enter. */
    @Test
    void stepsOfAMain() {
        Job job = job(SoilType.C, Texture.CLAY, Seepage.NONE, 6);
        String label = job.water().mains().get(0).label();
        Job both = JobPipes.withMains(job, run(label, Protection.BENCHED));
        assertThat(about(both, "bench-in-type").get(0).values()).containsEntry("at", "wall A and main " + label);
        Job clay = both.withSite(Jobs.with(both.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.B)));
        assertThat(about(clay, "bench-back").get(0).values()).containsEntry("at", "wall A and main " + label);
    }

    /** Digging by an item of the firm's own that follows all of it is told, for its parts are then not priced. */
    @Test
    void itemThatFollowsAllDigging(@TempDir Path folder) throws IOException {
        PriceBook own = Books.withOwn(folder, """
                {"code": "DIG-MACH", "section": "wall", "name": "Excavate at the wall by machine", "unit": "cy",
                 "homeowner": "We dig the soil away from the wall.", "follows": "dig by machine", "standard": true,
                 "labor": {"crew": "dig crew", "perHour": "6 cy", "machine": "mini-excavator", "slowedBy": []},
                 "source": {"text": "own jobs", "on": "2026-06-01"}}
                """);
        assertThat(Checked.findings(Jobs.job(Jobs.wall()), own).stream()
                        .filter(finding -> finding.id().equals("dig-as-one"))
                        .map(Finding::values))
                .singleElement()
                .satisfies(values ->
                        assertThat(values).containsEntry("items", "DIG-MACH").containsEntry("parts", "DIG-BULK"));
        assertThat(about(Jobs.job(Jobs.wall()), "dig-as-one")).isEmpty();
        Wall wall = Jobs.wall();
        Wall byHand = wall.withDigging(
                new Digging(Access.HAND, Percent.ZERO, wall.digging().bottomWidth(), Protection.SHIELDED));
        assertThat(Checked.findings(Jobs.job(byHand), own).stream().map(Finding::id))
                .doesNotContain("dig-as-one");
    }

    private static SolidRun run(String label, Protection protection) {
        return JobPipes.run(label, 40, size(protection));
    }

    private static TrenchSize size(Protection protection) {
        return new TrenchSize(Length.ofFeet(2), Length.ofFeet(6), Optional.of(protection));
    }

    /** Only what is to be benched is asked for its soil: of two mains and two roof lines one each, no sloped wall. */
    @Test
    void othersAreLeftAlone() {
        Job wall = Jobs.job(
                Jobs.with(Jobs.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.C)),
                Jobs.water(),
                Jobs.protectedBy(Jobs.deep(6), Protection.SLOPED));
        assertThat(about(wall, "bench-")).isEmpty();
        Job mains = JobPipes.withRoofLines(
                JobPipes.withMains(wall, run("M1", Protection.BENCHED), run("M2", Protection.SLOPED)),
                run("R1", Protection.SHIELDED),
                run("R2", Protection.BENCHED));
        List<Finding> found = about(mains, "bench-in-type");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).values()).containsEntry("at", "main M1 and roof line R2");
    }

    /** A discharge pipe 6 ft deep, if somebody wants one. */
    @ParameterizedTest(name = "discharge {0}: {1}")
    @CsvSource({"BENCHED, true", "SLOPED, false"})
    void dischargePipe(Protection protection, boolean described) {
        Job job = new WaterJob().sump(18.0, 24.0, 8.0, 30.0, 40.0, 20.0).build();
        Job dug = JobPipes.withOutlet(job, outlet -> JobPipes.withTrench(outlet, size(protection)))
                .withSite(Jobs.with(job.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.C)));
        assertThat(about(dug, "bench-in-type").stream()
                        .map(f -> f.values().get("at"))
                        .toList())
                .isEqualTo(described ? List.of("discharge pipe O1") : List.of());
    }
}
