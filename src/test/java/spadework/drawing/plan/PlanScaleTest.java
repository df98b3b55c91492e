// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.PlanJob;
import spadework.drawing.PlanLabels;
import spadework.drawing.RandomJobs;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Box;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;
import spadework.place.OutlineSpot;
import spadework.samples.Samples;
import spadework.wording.Language;

/** What is measured is drawn to scale, or it bears a break mark and its figure. */
class PlanScaleTest {
    private static final double TO_SCALE = 0.02;

    /** A tie and its mark lie that near to the line or the trunk that they belong to, points. */
    private static final double TIED = 17;

    static Stream<Arguments> jobs() {
        return Stream.of(
                        Samples.papered().stream()
                                .map(sample -> Arguments.of(
                                        sample.getFileName().toString(),
                                        Samples.bid(sample).dossier().job())),
                        Stream.of(
                                Arguments.of("two walls at a corner", PlanJob.corner()),
                                Arguments.of("twelve walls", PlanJob.twelveWalls())),
                        LongStream.range(0, 150).mapToObj(seed -> Arguments.of("seed " + seed, RandomJobs.of(seed))))
                .flatMap(all -> all);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void whatStandsBesideTheHouseStandsAtItsDistanceOrBearsAMarkAndItsFigure(String name, Job job) {
        Scene scene = PlanSketch.of(job);
        double scale = house(scene).width() / job.site().house().eastWest().feet();
        for (PlanLimit limit : Surroundings.of(job).limits()) {
            boolean toScale = drawn(scene, limit).anyMatch(out -> isNear(out, limit.distanceFeet() * scale));
            boolean broken = drawn(scene, limit).anyMatch(out -> isMarked(scene, limit.side(), out));
            assertThat(toScale || broken)
                    .as("%s, drawn at %s points", limit, drawn(scene, limit).toList())
                    .isTrue();
            assertThat(PlanLabels.texts(scene)).contains(limit.text(PlanWords.ENGLISH));
        }
    }

    /** Nothing is drawn at a distance of which nobody would know that it is not the measured one. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void noLineIsDrawnAtAnotherDistanceWithoutAMark(String name, Job job) {
        Scene scene = PlanSketch.of(job);
        double scale = house(scene).width() / job.site().house().eastWest().feet();
        for (PlanLimit limit : Surroundings.of(job).limits()) {
            assertThat(drawn(scene, limit).toList())
                    .allMatch(out -> isMarked(scene, limit.side(), out)
                            || Surroundings.of(job).on(limit.side()).stream()
                                    .anyMatch(one -> isNear(out, one.distanceFeet() * scale)));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void whatIsNearerToTheWallIsDrawnNearer(String name, Job job) {
        PlanLayout layout = layout(job);
        for (Side side : Side.values()) {
            List<PlanLimit> beforeOutlets = layout.around().on(side).stream()
                    .filter(limit ->
                            !limit.isFar() || layout.water().outletsOn(side).isEmpty())
                    .toList();
            assertThat(beforeOutlets.stream()
                            .map(limit -> layout.bands()
                                    .on(side)
                                    .out(limit, layout.frame().scale()))
                            .toList())
                    .isSorted();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void everyPipeIsAsLongAsItWasMeasuredOrBearsAMarkAndItsFigure(String name, Job job) {
        Scene scene = PlanSketch.of(job);
        PlanLayout layout = layout(job);
        String texts = String.join(" | ", PlanLabels.texts(scene));
        for (PlanRun run : layout.water().runs()) {
            if (run.length().isEmpty() || !layout.outlets().containsKey(run.outlet())) {
                continue;
            }
            layout.ways()
                    .mark(run)
                    .ifPresentOrElse(
                            mark -> {
                                Point outlet = layout.outlets().get(run.outlet());
                                if (layout.ways().isBrokenOff(run)) {
                                    assertThat(lines(scene, Role.BREAK))
                                            .anyMatch(stroke -> middle(stroke).distanceTo(outlet) < 6);
                                } else {
                                    assertThat(scene.shapes()).containsAll(mark.strokes());
                                }
                                assertThat(texts).contains(run.text());
                            },
                            () -> assertThat(run.label().isEmpty()
                                            || isNear(
                                                    length(layout, run),
                                                    run.length().orElseThrow().feet()
                                                            * layout.frame().scale()))
                                    .as("%s is %s points long", run, length(layout, run))
                                    .isTrue());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void everyDischargePipeIsAsLongAsItWasMeasuredOrBearsAMarkAndItsFigure(String name, Job job) {
        Scene scene = PlanSketch.of(job);
        PlanLayout layout = layout(job);
        double scale = layout.frame().scale();
        for (Outlet outlet : job.water().outlets()) {
            if (!OutletDrawing.hasDischarge(outlet)) {
                continue;
            }
            Point sump = layout.outlets().get(outlet.label());
            Side side = layout.water().sides().get(outlet.label());
            Point end = DischargeDrawing.end(outlet, sump, side, scale);
            double measured = outlet.discharge().orElseThrow().feet() * scale;
            DischargeDrawing.mark(outlet, sump, side, scale)
                    .ifPresentOrElse(
                            mark -> {
                                assertThat(scene.shapes()).containsAll(mark.strokes());
                                assertThat(String.join(" | ", PlanLabels.texts(scene)))
                                        .contains(
                                                outlet.discharge().orElseThrow().text());
                            },
                            () -> assertThat(sump.distanceTo(end)).isCloseTo(measured, within(TO_SCALE * measured)));
        }
    }

    /** Measured on the drawing itself: a gas line 4 ft from the wall lies 4 ft from it, and a cut pipe has a gap. */
    @Test
    void aGasLineLiesWhereItWasMeasuredAndThePipeThatIsTooLongIsCut() {
        Scene scene = PlanSketch.of(PlanJob.house(36, 26)
                .wall("C", Side.SOUTH, 0, 36)
                .drain("D1", TeeAt.END, "M1", "C")
                .main("M1", "O")
                .outlet("O", OutletKind.DAYLIGHT, "ditch on the south")
                .limit(LimitKind.UTILITY, "C", 4)
                .job());

        Box house = house(scene);
        double scale = house.width() / 36;
        Line gas = lines(scene, Role.LIMIT).get(0);
        assertThat(gas.y1() - house.y() - house.height()).isCloseTo(4 * scale, within(0.01));
        List<Line> strokes = lines(scene, Role.BREAK);
        assertThat(strokes).hasSize(2);
        double above = middle(strokes.get(0)).y();
        double below = middle(strokes.get(1)).y();
        assertThat(lines(scene, Role.MAIN))
                .filteredOn(line -> line.x1() == line.x2())
                .noneMatch(line ->
                        Math.min(line.y1(), line.y2()) < below - 0.01 && Math.max(line.y1(), line.y2()) > above + 0.01);
        assertThat(PlanLabels.texts(scene))
                .contains("M1 60 ft", "Utility line, 4 ft away")
                .contains("To scale, except narrow trenches and pipe routes; at // the figure counts.");
    }

    @Test
    void aPlanWithoutMarksDoesNotExplainThem() {
        Scene scene = PlanSketch.of(PlanJob.house(36, 26)
                .wall("A", Side.EAST, 0, 26)
                .limit(LimitKind.PROPERTY_LINE, "A", 22)
                .job());

        assertThat(lines(scene, Role.BREAK)).isEmpty();
        assertThat(PlanLabels.texts(scene)).contains("To scale, except narrow trenches and pipe routes.");
    }

    @Test
    void theMarkIsExplainedInTheLanguageOfThePaper() {
        assertThat(PlanLabels.texts(PlanSketch.of(PlanJob.corner(), Language.of("es"))))
                .contains("A escala, salvo zanjas angostas y recorrido de tubos; en // vale la cifra.");
    }

    private static PlanLayout layout(Job job) {
        PlanWords words = PlanWords.ENGLISH;
        PlanSize usual = PlanSize.AMONG_OTHERS;
        return PlanLayout.aboveFoot(job, usual, words);
    }

    private static double length(PlanLayout layout, PlanRun run) {
        double drawn = 0;
        for (List<Point> way : layout.ways().all(run)) {
            for (int i = 1; i < way.size(); i++) {
                drawn += way.get(i - 1).distanceTo(way.get(i));
            }
        }
        // The sign of the outlet takes the last of it.
        return drawn + 7;
    }

    private static boolean isNear(double drawn, double measured) {
        return Math.abs(drawn - measured) <= TO_SCALE * measured;
    }

    /** How far from the house the things of its kind lie that are drawn on a limit's side. */
    private static Stream<Double> drawn(Scene scene, PlanLimit limit) {
        boolean across = OutlineSpot.isAcross(limit.side());
        Stream<Point> places = limit.isTree()
                ? scene.shapes().stream()
                        .filter(shape -> shape instanceof Dot dot && dot.role() == Role.LIMIT && dot.filled())
                        .map(shape -> new Point(((Dot) shape).x(), ((Dot) shape).y()))
                : lines(scene, Role.LIMIT).stream()
                        .filter(line -> across ? line.y1() == line.y2() : line.x1() == line.x2())
                        .map(PlanScaleTest::middle);
        return places.map(place -> out(house(scene), limit.side(), place)).filter(out -> out > 0);
    }

    private static boolean isMarked(Scene scene, Side side, double out) {
        return lines(scene, Role.BREAK).stream()
                .map(stroke -> out - out(house(scene), side, middle(stroke)))
                .anyMatch(nearer -> nearer > 0 && nearer < TIED);
    }

    private static double out(Box house, Side side, Point place) {
        return switch (side) {
            case NORTH -> house.y() - place.y();
            case SOUTH -> place.y() - house.y() - house.height();
            case EAST -> place.x() - house.x() - house.width();
            case WEST -> house.x() - place.x();
        };
    }

    private static Point middle(Line line) {
        return new Point((line.x1() + line.x2()) / 2, (line.y1() + line.y2()) / 2);
    }

    private static Box house(Scene scene) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Box box && box.role() == Role.HOUSE)
                .map(Box.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static List<Line> lines(Scene scene, Role role) {
        return scene.shapes().stream()
                .filter(shape -> shape instanceof Line line && line.role() == role)
                .map(Line.class::cast)
                .toList();
    }
}
