// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.drawing.PlanJob;
import spadework.drawing.shape.LineHops;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;

/** Pipes that cross are drawn otherwise than pipes that join. */
class PipeCrossingTest {
    private static final List<Point> EAST = List.of(new Point(0, 10), new Point(40, 10));
    private static final List<Point> SOUTH = List.of(new Point(20, 0), new Point(20, 30));

    /** A drain on the north, a main from its east end, and a roof line from a downspout on the same wall. */
    private static PlanJob house() {
        return PlanJob.house(40, 28).wall("A", Side.NORTH, 0, 40).drain("D1", TeeAt.END, "M1", "A");
    }

    private static Job roofWaterOverTheDrain() {
        return house().main("M1", "O1")
                .roofLine("R1", "O2")
                .downspout("DS1", "R1", Side.NORTH, 10)
                .downspout("DS2", "R1", Side.NORTH, 30)
                .outlet("O1", OutletKind.DAYLIGHT, "ditch along the east lot line")
                .outlet("O2", OutletKind.DAYLIGHT, "ditch along the east lot line, roof water")
                .job();
    }

    @Test
    void aLineHopsOverAnotherByTheRadiusOfAHop() {
        List<Point> hopped = LineHops.over(EAST, List.of(SOUTH));

        assertThat(hopped).startsWith(new Point(0, 10)).endsWith(new Point(40, 10));
        assertThat(hopped.stream().mapToDouble(Point::y).min().orElseThrow())
                .isCloseTo(10 - LineHops.RADIUS, within(1e-9));
        assertThat(hopped.subList(1, hopped.size() - 1))
                .allSatisfy(point ->
                        assertThat(point.distanceTo(new Point(20, 10))).isCloseTo(LineHops.RADIUS, within(1e-9)));
    }

    @Test
    void anUprightLineHopsToTheRight() {
        assertThat(LineHops.over(SOUTH, List.of(EAST)).stream()
                        .mapToDouble(Point::x)
                        .max()
                        .orElseThrow())
                .isCloseTo(20 + LineHops.RADIUS, within(1e-9));
    }

    @Test
    void whereALineOnlyBeginsOrRunsBesideItDoesNotHop() {
        List<Point> from = List.of(new Point(20, 10), new Point(20, 30));
        List<Point> beside = List.of(new Point(0, 15), new Point(40, 15));

        assertThat(LineHops.over(from, List.of(EAST))).isEqualTo(from);
        assertThat(LineHops.over(EAST, List.of(beside))).isEqualTo(EAST);
    }

    @Test
    void twoLinesCloseTogetherAreCrossedInOneHop() {
        List<Point> near = List.of(new Point(22, 0), new Point(22, 30));

        List<Point> hopped = LineHops.over(EAST, List.of(SOUTH, near));

        double top = 10 - LineHops.RADIUS;
        assertThat(hopped)
                .anySatisfy(point ->
                        assertThat(point.distanceTo(new Point(20, top))).isLessThan(1e-9));
        assertThat(hopped)
                .anySatisfy(point ->
                        assertThat(point.distanceTo(new Point(22, top))).isLessThan(1e-9));
        assertThat(hopped.stream().filter(point -> Math.abs(point.y() - 10) < 1e-9))
                .hasSize(4);
    }

    @Test
    void aPipeIsJoinedWhereThreeOfItsWaysMeet() {
        List<Point> branch = List.of(new Point(20, 0), new Point(20, 10), new Point(40, 10));

        assertThat(PipeJoints.of(List.of(EAST, branch))).containsExactly(new Point(20, 10));
        assertThat(PipeJoints.of(List.of(branch))).isEmpty();
    }

    @Test
    void roofWaterHopsOverTheDrainAndTheLegendSaysSo() {
        Scene plan = PlanSketch.of(roofWaterOverTheDrain());

        assertThat(texts(plan)).contains("Pipes cross", "Pipes join");
        // Both downspouts' pipes cross the drain beside the wall: each in a half circle of straight pieces.
        assertThat(hopsOverTheDrain(plan)).isEqualTo(2);
    }

    @Test
    void theSecondDownspoutJoinsTheFirstOnesPipe() {
        RunWays ways = PlanLayout.of(roofWaterOverTheDrain(), PlanSize.AMONG_OTHERS, PlanWords.ENGLISH)
                .ways();
        PlanRun roof = ways.water().runs().get(1);

        // DS2, nearer to the outlet, leaves first: on its straight way out the pipe of DS1 comes in.
        List<Point> joints = PipeJoints.of(ways.all(roof));

        assertThat(joints).hasSize(1);
        assertThat(joints.get(0).x())
                .isCloseTo(ways.frame().at(roof.leaves(), 0).x(), within(1e-9));
    }

    @Test
    void whereNothingCrossesTheLegendIsSilent() {
        Job job = house().main("M1", "O1")
                .outlet("O1", OutletKind.DAYLIGHT, "ditch along the east lot line")
                .job();

        assertThat(texts(PlanSketch.of(job))).doesNotContain("Pipes cross");
    }

    private static List<String> texts(Scene scene) {
        return scene.shapes().stream()
                .filter(Label.class::isInstance)
                .map(shape -> ((Label) shape).text())
                .toList();
    }

    /** Groups of short upright-bound pieces of roof line beside the drain's line. */
    private static long hopsOverTheDrain(Scene plan) {
        double drain = plan.shapes().stream()
                .filter(shape -> shape instanceof Line line
                        && line.role() == Role.DRAIN
                        && line.weight() == Weight.MEDIUM
                        && line.y1() == line.y2())
                .mapToDouble(shape -> ((Line) shape).y1())
                .min()
                .orElseThrow();
        return plan.shapes().stream()
                .filter(shape -> shape instanceof Line line
                        && line.role() == Role.ROOF_LINE
                        && Math.abs(line.y2() - drain) < 1e-6
                        && Math.abs(line.x2() - line.x1()) < LineHops.RADIUS)
                .count();
    }
}
