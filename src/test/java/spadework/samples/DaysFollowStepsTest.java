// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Job;
import spadework.job.SolidRun;
import spadework.office.Bid;
import spadework.paperwork.Dossier;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.scope.ScopeStep;
import spadework.paperwork.scope.StepKind;
import spadework.pricebook.Section;
import spadework.schedule.CrewCalendar;
import spadework.schedule.DayPart;
import spadework.schedule.RoofOverWall;
import spadework.schedule.Stage;
import spadework.schedule.Steps;
import spadework.schedule.WorkDay;
import spadework.takeoff.TakeoffLine;

/** The days lay nothing before what the steps do first: over every sample and jobs by seed. */
class DaysFollowStepsTest {
    private static final List<Named<Bid>> BIDS = GeneratedBids.withSamples(120);

    static Stream<Named<Bid>> bids() {
        return BIDS.stream();
    }

    /** The kinds of step that a stage does, by the lines that are done in it, on the page of pipes and ground. */
    private static Map<Stage, List<StepKind>> kinds(Bid bid) {
        Dossier dossier = bid.dossier();
        List<ScopeStep> pipes = ScopePaper.steps(dossier).pipes();
        Map<Stage, List<StepKind>> kinds = new HashMap<>();
        for (TakeoffLine line : dossier.takeoff().lines()) {
            if (line.section().kind() != Section.WALL && line.from().isPresent()) {
                Stage stage = Steps.stage(dossier.job(), dossier.book().get(line.code()), line);
                pipes.stream()
                        .filter(step ->
                                step.kind() != StepKind.ITEM && step.items().contains(line.code()))
                        .map(ScopeStep::kind)
                        .filter(kind -> kind.when() == stage.step())
                        .forEach(kind -> kinds.computeIfAbsent(stage, one -> new ArrayList<>())
                                .add(kind));
            }
        }
        return kinds;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void noDayHasAStageWhoseStepComesBeforeAStepOfAnEarlierDay(Bid bid) {
        Map<Stage, List<StepKind>> kinds = kinds(bid);
        List<StepKind> before = new ArrayList<>();
        for (WorkDay day : days(bid)) {
            List<StepKind> today = new ArrayList<>();
            for (Stage stage :
                    day.parts().stream().map(DayPart::stage).distinct().toList()) {
                if (kinds.containsKey(stage)) {
                    StepKind last = kinds.get(stage).stream()
                            .max(Comparator.naturalOrder())
                            .orElseThrow();
                    assertThat(before)
                            .as("day %s, %s", day.number(), stage)
                            .allSatisfy(done -> assertThat(done).isLessThanOrEqualTo(last));
                    today.add(kinds.get(stage).stream()
                            .min(Comparator.naturalOrder())
                            .orElseThrow());
                }
            }
            before.addAll(today);
        }
    }

    /** Over a dug wall: the drain's test, the fill, the roof line, in that order on the days and among the steps. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void aRoofLineOverADugWallIsLaidWhenTheDrainUnderItIsTestedAndTheTrenchFilled(Bid bid) {
        Job job = bid.dossier().job();
        List<String> over = job.water().roofLines().stream()
                .filter(line -> RoofOverWall.isOver(job, line))
                .map(SolidRun::label)
                .toList();
        List<Stage> stages = days(bid).stream()
                .flatMap(day -> day.parts().stream())
                .map(DayPart::stage)
                .distinct()
                .toList();

        assertThat(stages.contains(Stage.ROOF_OVER)).isEqualTo(!over.isEmpty());
        List<StepKind> steps = ScopePaper.steps(bid.dossier()).pipes().stream()
                .map(ScopeStep::kind)
                .toList();
        assertThat(steps.contains(StepKind.ROOF_OVER)).isEqualTo(!over.isEmpty());
        if (!over.isEmpty()) {
            assertThat(stages).containsSubsequence(Stage.DRAIN, Stage.FLOW_TEST, Stage.BACKFILL, Stage.ROOF_OVER);
            assertThat(steps).containsSubsequence(StepKind.HOLD_3, StepKind.ROOF_OVER);
        }
    }

    /** Both downspouts of that house come down before its dug east wall. */
    @Test
    void theSampleWithDownspoutsAtItsDugWallHasSuchALine() {
        Bid bid = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));
        assertThat(days(bid).stream().flatMap(day -> day.parts().stream()).map(DayPart::stage))
                .contains(Stage.ROOF_OVER);
    }

    private static List<WorkDay> days(Bid bid) {
        Dossier dossier = bid.dossier();
        return CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff())
                .days();
    }
}
