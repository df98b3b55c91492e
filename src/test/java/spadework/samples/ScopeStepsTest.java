// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.FinishSystem;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.office.Bid;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.scope.ScopeStep;
import spadework.paperwork.scope.ScopeSteps;
import spadework.paperwork.scope.StepEvidence;
import spadework.paperwork.scope.StepFigure;
import spadework.paperwork.scope.StepKind;
import spadework.paperwork.scope.WallSteps;
import spadework.paperwork.work.DigWork;
import spadework.paperwork.work.DigWorks;
import spadework.pricebook.Section;
import spadework.schedule.RoofOverWall;
import spadework.takeoff.TakeoffLine;

/** What is sold is done, and what is done is sold or included: over every sample and jobs by seed. */
class ScopeStepsTest {
    /** Steps that no line pays for by itself: they are how the other work is done, looked at or left. */
    private static final Set<StepKind> INCLUDED = EnumSet.of(
            StepKind.ENGINEER,
            StepKind.LOCATE,
            StepKind.PRIVATE_LINES,
            StepKind.WAY_IN,
            StepKind.LOOK_FIRST,
            StepKind.ASK_FIRST,
            StepKind.LINE,
            StepKind.PIPE_LINE,
            StepKind.PROTECT,
            StepKind.DIG_BY_HAND,
            StepKind.SPOIL,
            StepKind.BANK,
            StepKind.INSPECT,
            StepKind.LADDER,
            StepKind.LEAD_SAFE,
            StepKind.PIPE_TRENCH,
            StepKind.PIPE_WALL,
            StepKind.PIPE_BANK,
            StepKind.PIPE_INSPECT,
            StepKind.PIPE_LADDER,
            StepKind.OUTLET_UNDER,
            StepKind.OUTLET_GROUND,
            StepKind.HOLD_1,
            StepKind.HOLD_2,
            StepKind.LEAD,
            StepKind.HAUL,
            StepKind.CLEAN_UP);

    private static final List<Named<Bid>> BIDS = GeneratedBids.withSamples(120);
    private static final IdentityHashMap<Bid, ScopeSteps> STEPS = new IdentityHashMap<>();

    static Stream<Named<Bid>> bids() {
        return BIDS.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void everyLineOfThePriceHasItsStepAndEveryStepItsLine(Bid bid) {
        ScopeSteps steps = steps(bid);

        assertThat(bid.takeoff().lines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(placesOf(line, steps))
                        .as("%s of %s", line.code(), line.section().name())
                        .anyMatch(step -> step.items().contains(line.code())));
        assertThat(steps.all())
                .filteredOn(ScopeStep::included)
                .extracting(ScopeStep::kind)
                .isSubsetOf(INCLUDED);
    }

    /** What an assembly puts in at the corners is more than the walls ask for: it is sold, so it has steps. */
    @Test
    void whatAnAssemblyPutsInHasStepsOfItsOwn() {
        ScopeSteps steps = steps(Samples.bid(Path.of("sample-quotes/corners-by-assembly")));

        assertThat(steps.all())
                .filteredOn(step -> step.text().contains("where two trenches meet"))
                .hasSize(3)
                .allMatch(step -> step.kind() == StepKind.ITEM);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void theStepsStandInTheOrderOfTheTradeUnderNumbersWithoutAGap(Bid bid) {
        ScopeSteps steps = steps(bid);

        assertThat(steps.all())
                .extracting(ScopeStep::number)
                .isEqualTo(IntStream.rangeClosed(1, steps.all().size()).boxed().toList());
        List<List<ScopeStep>> pages = new ArrayList<>(List.of(steps.before(), steps.pipes()));
        steps.walls().forEach(wall -> pages.add(wall.steps()));
        assertThat(pages)
                .allSatisfy(page -> assertThat(page.stream()
                                .map(ScopeStep::kind)
                                .filter(kind -> kind != StepKind.ITEM)
                                .toList())
                        .isSorted()
                        .doesNotHaveDuplicates());
        assertThat(steps.walls())
                .allSatisfy(wall -> assertThat(wall.steps())
                        .extracting(ScopeStep::kind)
                        .contains(StepKind.HOLD_1, StepKind.HOLD_2));
        assertThat(steps.pipes()).extracting(ScopeStep::kind).contains(StepKind.HOLD_3);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void aStepStandsOnlyWhereItIsTrueOfThisJob(Bid bid) {
        ScopeSteps steps = steps(bid);
        boolean engineer = bid.findings().stream()
                        .anyMatch(finding -> finding.id().startsWith("engineer-"))
                || bid.takeoff().lines().stream().anyMatch(line -> line.code().equals("ENG-VISIT"));
        boolean sump =
                bid.dossier().job().water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);

        assertThat(steps.all().get(0).kind() == StepKind.ENGINEER).isEqualTo(engineer);
        assertThat(text(steps.all()).contains("sump")).isEqualTo(sump);
        for (Wall wall : bid.dossier().job().walls()) {
            WallSteps page = steps.ofWall(wall.label());
            boolean deep = wall.deepestTrench().compareTo(StepFigure.LADDER_FROM.length()) >= 0;
            assertThat(page.steps().stream().anyMatch(step -> step.kind() == StepKind.LADDER))
                    .isEqualTo(deep);
            if (wall.finish().system() == FinishSystem.PARGE) {
                assertThat(text(page.steps())).doesNotContain("Coating", "gauge");
            }
        }
    }

    /** Each pipe trench and each pit that people go into says what keeps its bank, and has a ladder from 4 ft on. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void everyHoleAwayFromTheWallsIsProtectedInWords(Bid bid) {
        List<ScopeStep> pipes = steps(bid).pipes();
        List<DigWork> digs = DigWorks.of(bid.dossier().job());

        assertThat(digs).allSatisfy(dig -> {
            assertThat(text(of(pipes, StepKind.PIPE_TRENCH))).contains(dig.label(), dig.depth());
            assertThat(text(of(pipes, StepKind.PIPE_BANK)))
                    .contains(dig.isShallow() ? "competent person sees no sign of a cave-in" : dig.label());
        });
        assertThat(of(pipes, StepKind.PIPE_LADDER).isEmpty())
                .isEqualTo(digs.stream().noneMatch(DigWork::wayOut));
    }

    private static List<ScopeStep> of(List<ScopeStep> steps, StepKind kind) {
        return steps.stream().filter(step -> step.kind() == kind).toList();
    }

    /** A hold point is seen by two, and a coating leaves its readings: each has its place on the paper. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void everyHoldPointAndEveryCoatHasItsPlaceForEvidence(Bid bid) {
        ScopeSteps steps = steps(bid);

        assertThat(steps.all().stream().filter(step -> step.hold() != 0))
                .isNotEmpty()
                .allSatisfy(step -> assertThat(kinds(step)).contains("photo").containsOnlyOnce("photo"))
                .allSatisfy(step -> assertThat(kinds(step).stream().filter("initials"::equals))
                        .hasSize(2));
        for (Wall wall : bid.dossier().job().walls()) {
            boolean coated = wall.finish().system() == FinishSystem.COATING;
            assertThat(steps.ofWall(wall.label()).steps().stream()
                            .flatMap(step -> step.evidence().stream())
                            .anyMatch(evidence -> evidence.label().contains("wet mils")))
                    .isEqualTo(coated);
        }
        String test = text(steps.pipes().stream()
                .filter(step -> step.kind() == StepKind.HOLD_3)
                .toList());
        Job job = bid.dossier().job();
        assertThat(test.contains("downspout"))
                .isEqualTo(job.water().roofLines().stream().anyMatch(line -> !RoofOverWall.isOver(job, line)));
        assertThat(text(of(steps.pipes(), StepKind.ROOF_OVER)).contains("downspout"))
                .isEqualTo(job.water().roofLines().stream().anyMatch(line -> RoofOverWall.isOver(job, line)));
    }

    /** "Fall freely" alone is said only of outlets whose pipe is known to end above its ground. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void anOutletThatMayLieUnderItsGroundHasAStepBeforeItIsBuilt(Bid bid) {
        List<StepKind> steps = steps(bid).pipes().stream().map(ScopeStep::kind).toList();
        Job job = bid.dossier().job();
        List<SolidRun> runs = Stream.concat(job.water().mains().stream(), job.water().roofLines().stream())
                .filter(run -> job.water().outlets().stream()
                        .anyMatch(outlet -> outlet.kind() == OutletKind.DAYLIGHT
                                && outlet.label().equals(run.into())))
                .toList();
        boolean under = runs.stream()
                .anyMatch(run -> run.endGrade()
                        .filter(grade -> run.endInvert()
                                .filter(invert -> invert.feet() < grade.feet())
                                .isPresent())
                        .isPresent());
        if (under) {
            assertThat(steps).contains(StepKind.OUTLET_UNDER);
        }
        if (runs.stream().anyMatch(run -> run.endGrade().isEmpty())) {
            assertThat(steps).contains(StepKind.OUTLET_GROUND);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void outletsOfTheSamplesLieAboveTheirGround(Path sample) {
        assertThat(steps(Samples.bid(sample)).pipes())
                .extracting(ScopeStep::kind)
                .doesNotContain(StepKind.OUTLET_UNDER, StepKind.OUTLET_GROUND);
    }

    /** The drain of 71 ft falls from 92.48 to 92.12; the corner of 3 ft lies between the walls of 42 ft and 26 ft. */
    @Test
    void eachWallsPageGivesTheLevelsOfItsOwnStretch() {
        List<WallSteps> walls = steps(Samples.bid(Path.of("sample-quotes/block-basement-to-swale")))
                .walls();

        assertThat(text(of(walls.get(0).steps(), StepKind.PIPE))).contains("D1: 92.48 ft to 92.27 ft");
        assertThat(text(of(walls.get(1).steps(), StepKind.PIPE))).contains("D1: 92.25 ft to 92.12 ft");
    }

    private static List<String> kinds(ScopeStep step) {
        return step.evidence().stream().map(StepEvidence::kind).toList();
    }

    private static ScopeSteps steps(Bid bid) {
        return STEPS.computeIfAbsent(
                bid, one -> ScopePaper.of(one.dossier(), one.plan()).steps());
    }

    /** Work of a wall is done on that wall's page, all other work anywhere. */
    private static List<ScopeStep> placesOf(TakeoffLine line, ScopeSteps steps) {
        return line.section().kind() == Section.WALL
                ? steps.ofWall(line.section().label()).steps()
                : steps.all();
    }

    private static String text(List<ScopeStep> steps) {
        return String.join("\n", steps.stream().map(ScopeStep::text).toList());
    }
}
