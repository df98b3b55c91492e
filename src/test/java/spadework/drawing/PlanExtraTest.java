// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Agreements;
import spadework.job.Alteration;
import spadework.job.Job;
import spadework.job.Option;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.press.svg.SceneSvg;
import spadework.wording.Language;

/** Walls and pipes of options are drawn apart from what is agreed, and say so. */
class PlanExtraTest {
    private static final Job JOB = PlanJob.corner();

    /** What the corner's job lacks: a wall on the south with a drain of its own. */
    private static Job more() {
        return PlanJob.house(40, 28)
                .wall("F", Side.SOUTH, 4, 20)
                .drain("D9", TeeAt.END, "M1", "F")
                .job();
    }

    private static Alteration alteration() {
        Alteration none = Alteration.NONE;
        Job more = more();
        return new Alteration(
                more.walls(),
                none.finishes(),
                none.corners(),
                more.water().drains(),
                none.mains(),
                none.roofLines(),
                none.downspouts(),
                none.outlets(),
                none.items(),
                none.restoration(),
                none.takenAway());
    }

    private static Job offering(Alteration alteration) {
        return Agreements.with(
                JOB,
                Agreements.agreement(
                        List.of(new Option("OP1", "South wall", "Dry there too", alteration)),
                        Optional.empty(),
                        List.of()));
    }

    private static List<Role> lines(Scene scene) {
        return scene.shapes().stream()
                .filter(Line.class::isInstance)
                .map(shape -> ((Line) shape).role())
                .distinct()
                .toList();
    }

    private static List<String> labels(Scene scene) {
        return scene.shapes().stream()
                .filter(Label.class::isInstance)
                .map(shape -> ((Label) shape).text())
                .toList();
    }

    @Test
    void aJobWithoutOptionsIsDrawnAsEver() {
        assertThat(PlanSketch.withOptions(JOB, Language.ENGLISH)).isEqualTo(PlanSketch.of(JOB));
    }

    @Test
    void anOptionThatAddsNoWallOrPipeChangesNoLine() {
        assertThat(PlanSketch.withOptions(offering(Alteration.NONE), Language.ENGLISH))
                .isEqualTo(PlanSketch.of(JOB));
    }

    @Test
    void optionalWallAndPipeAreDashedKeyedAndNamed() {
        Scene plan = PlanSketch.withOptions(offering(alteration()), Language.ENGLISH);
        assertThat(lines(plan)).contains(Role.WALL, Role.EXTRA_WALL, Role.EXTRA_PIPE);
        assertThat(labels(plan)).contains("F", "Optional wall", "Optional pipe", "Dug only for an option");
        assertThat(SceneSvg.of(plan)).contains("stroke-dasharray=\"7.00 3.00\"", "stroke-dasharray=\"1.20 2.20\"");
    }

    @Test
    void theWordsSayWhatIsOptional() {
        assertThat(PlanSketch.withOptions(offering(alteration()), Language.ENGLISH)
                        .alternative())
                .contains(" Optional, only if you choose it: Wall F, the south wall, faces south")
                .contains(" Optional, only if you choose it: Footing drain D9 runs along wall F")
                .contains(" Wall A, the north wall, faces north");
    }

    @Test
    void whatIsAgreedStaysWhereItWas() {
        List<Shape> agreed = PlanSketch.of(JOB).shapes().stream()
                .filter(PlanExtraTest::isWall)
                .toList();
        List<Shape> both = PlanSketch.withOptions(offering(alteration()), Language.ENGLISH).shapes().stream()
                .filter(PlanExtraTest::isWall)
                .toList();
        assertThat(both).as("walls of the contract and their end marks").hasSize(agreed.size() + 2);
    }

    @Test
    void groundThatIsDugApartIsKeyedOnlyWhereItIsDrawn() {
        Job plain = PlanJob.house(40, 28).wall("A", Side.NORTH, 0, 40).job();

        assertThat(labels(PlanSketch.of(plain))).doesNotContain("Dug only for an option", "Dug only for this change");
    }

    private static boolean isWall(Shape shape) {
        return shape instanceof Line line && line.role() == Role.WALL;
    }

    @Test
    void aWallThatAChangeAddsIsKeyedAsAdded() {
        Wall wall = more().walls().get(0);
        Job after = PlanJob.house(40, 28)
                .wall("A", Side.NORTH, 0, 40)
                .wall(wall.label(), Side.SOUTH, 4, 20)
                .job();
        Job before = PlanJob.house(40, 28).wall("A", Side.NORTH, 0, 40).job();
        Scene plan = PlanSketch.changed(before, after, Language.ENGLISH);
        assertThat(labels(plan))
                .contains("Wall added", "Dug only for this change")
                .doesNotContain("Pipe added", "Optional wall", "Dug only for an option");
        assertThat(plan.alternative()).contains("Added by this change: Wall F");
    }
}
