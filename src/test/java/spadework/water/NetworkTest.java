// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.TeeAt;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;
import spadework.samples.Samples;
import spadework.takeoff.Quantity;
import spadework.working.Recomputed;
import spadework.working.Worked;
import spadework.working.Working;

/** Pipes laid out as reaches. */
class NetworkTest {

    private static Network network(WaterJob job) {
        return Network.of(job.build(), Books.standard());
    }

    private static Reach only(Network network, String run) {
        assertThat(network.ofRun(run)).hasSize(1);
        return network.ofRun(run).get(0);
    }

    /** 92.60 to 92.20 over 40 ft: 0.4 ft, 1%. */
    @Test
    void drainFallsTowardItsTee() {
        Reach drain = only(network(new WaterJob()), "D1");
        assertThat(drain.kind()).isEqualTo(ReachKind.DRAIN);
        assertThat(drain.into()).isEqualTo("M1");
        assertThat(drain.fall().orElseThrow().drop().number()).isCloseTo(0.4, within(1e-9));
        assertThat(drain.fall().orElseThrow().slope().number()).isCloseTo(0.01, within(1e-9));
    }

    @Test
    void drainWithItsTeeAtTheStartRunsTheOtherWay() {
        Reach drain = only(network(new WaterJob().drain(92.2, 92.6).teeAt(TeeAt.START)), "D1");
        assertThat(drain.fall().orElseThrow().drop().number()).isCloseTo(0.4, within(1e-9));
        assertThat(drain.stations().get(0).invert()).contains(Length.ofFeet(92.6));
    }

    @Test
    void drainWithItsTeeInTheMiddleHasTwoSides() {
        Network network = network(new WaterJob().drain(92.6, 92.5).teeInMiddle(92.3));
        assertThat(network.ofRun("D1")).extracting(Reach::label).containsExactly("D1/1", "D1/2");
        assertThat(network.ofRun("D1"))
                .allSatisfy(side -> assertThat(side.length().number()).isEqualTo(20));
        assertThat(network.ofRun("D1"))
                .extracting(side -> Math.round(side.fall().orElseThrow().drop().number() * 1000))
                .containsExactly(300L, 200L);
    }

    @Test
    void unknownLevelsGiveNoFallAndNoCapacity() {
        Reach drain = only(network(new WaterJob().drain(92.6, null)), "D1");
        assertThat(drain.fall()).isEmpty();
        assertThat(drain.flow().full()).isEmpty();
        assertThat(drain.flow().share()).isEmpty();
        assertThat(drain.flow().inflow()).isPresent();
    }

    @Test
    void backwardPipeHasNoCapacity() {
        Reach main = only(network(new WaterJob().main(40, 92.0, 92.1)), "M1");
        assertThat(main.fall().orElseThrow().drop().number()).isNegative();
        assertThat(main.flow().full()).isEmpty();
    }

    /** Ground 97.00 over an invert at 92.20 in SDR 35 pipe, inside 3.975 and outside 4.215 in (ASTM D3034). */
    @Test
    void coverIsOverThePipesOutside() {
        Reach main = only(network(new WaterJob()), "M1");
        assertThat(main.cover().start().orElseThrow().number())
                .isCloseTo(97 - 92.2 - (3.975 + 4.215) / 24, within(1e-9));
        assertThat(only(network(new WaterJob().mainGrade(null, 92.0)), "M1")
                        .cover()
                        .start())
                .isEmpty();
    }

    /** Ground at the start 97.50, wall 5 ft to the footing's top, footing of 8 in. */
    @Test
    void footingsBottomFollowsFromTheGround() {
        Job job = new WaterJob().build();
        FootingBottom bottom = FootingBottom.of(job, job.water().drains().get(0));
        assertThat(bottom.start().orElseThrow().number()).isCloseTo(97.5 - 5 - 8.0 / 12, within(1e-9));
        Job unknown = new WaterJob().drainGrade(null, 97.5).build();
        assertThat(FootingBottom.of(unknown, unknown.water().drains().get(0)).start())
                .isEmpty();
    }

    /** The same at its end: ground 96.80, wall 5 ft and footing of 8 in; unknown where nobody took the level. */
    @Test
    void footingsBottomAtTheEnd() {
        Job job = new WaterJob().drainGrade(97.5, 96.8).build();
        FootingBottom bottom = FootingBottom.of(job, job.water().drains().get(0));
        assertThat(bottom.end().orElseThrow().number()).isCloseTo(96.8 - 5 - 8.0 / 12, within(1e-9));
        Job unknown = new WaterJob().drainGrade(97.5, null).build();
        FootingBottom half = FootingBottom.of(unknown, unknown.water().drains().get(0));
        assertThat(half.end()).isEmpty();
        assertThat(half.start()).isPresent();
    }

    /** Cover at the end: 92.00 over an invert at 91.50 lies 0.50 ft less half of inside and outside over it. */
    @Test
    void coverAtTheEnd() {
        Reach main = only(network(new WaterJob()), "M1");
        assertThat(main.cover().end().orElseThrow().number()).isCloseTo(92 - 91.5 - (3.975 + 4.215) / 24, within(1e-9));
        assertThat(only(network(new WaterJob().main(40, null, 91.5)), "M1")
                        .cover()
                        .start())
                .isEmpty();
    }

    /** A pipe without length has no slope. */
    @Test
    void pipeWithoutLengthHasNoFall() {
        assertThat(only(network(new WaterJob().main(0, 92.2, 91.5)), "M1").fall())
                .isEmpty();
    }

    /** A level pipe carries nothing by its own fall. */
    @Test
    void levelPipeHasNoCapacity() {
        Reach main = only(network(new WaterJob().main(40, 92.0, 92.0)), "M1");
        assertThat(main.fall().orElseThrow().drop().number()).isZero();
        assertThat(main.flow().full()).isEmpty();
    }

    /** The share of a pipe that is used is its inflow over what it carries full. */
    @Test
    void shareOfTheCapacity() {
        Reach main = only(network(new WaterJob()), "M1");
        double inflow = main.flow().inflow().orElseThrow().high().number();
        double full = main.flow().full().orElseThrow().gpm().number();
        assertThat(main.flow().share().orElseThrow().number()).isCloseTo(inflow / full * 100, within(1e-9));
    }

    @Test
    void inflowAddsUpAlongTheNetwork() {
        Network network = network(new WaterJob()
                .roofLine("R1", 60, 95.0, 93.0, 97.0)
                .downspout("DS1", 500, "R1")
                .downspout("DS2", 700, "R1")
                .uphill(43_560, "0.30", "R1"));
        double roof = 0.0104 * 1200 * 3;
        double runoff = 0.30 * 3 * 1 * 448.831;
        assertThat(only(network, "R1").flow().inflow().orElseThrow().high().number())
                .isCloseTo(roof + runoff, within(1e-6));
        Range drain = only(network, "D1").flow().inflow().orElseThrow();
        assertThat(only(network, "M1").flow().inflow().orElseThrow().low().number())
                .isCloseTo(drain.low().number(), within(1e-9));
        assertThat(network.arriving("O1").orElseThrow().high().number())
                .isCloseTo(roof + runoff + drain.high().number(), within(1e-6));
    }

    @Test
    void roofWaterWithoutRainIsUnknownNotNothing() {
        Network network = network(
                new WaterJob().rain(null).roofLine("R1", 60, 95.0, 93.0, 97.0).downspout("DS1", 500, "R1"));
        assertThat(only(network, "R1").flow().inflow()).isEmpty();
        assertThat(only(network, "M1").flow().inflow()).isPresent();
        assertThat(network.arriving("O1")).isEmpty();
    }

    /** IPC 704.1 as in Chicago Table 18-29-704.1 (G-03). */
    @ParameterizedTest(name = "{0} in: {1} in a foot")
    @CsvSource({"1.5, 0.25", "2.5, 0.25", "3, 0.125", "4, 0.125", "6, 0.125", "8, 0.0625", "10, 0.0625"})
    void leastSlopeBySize(double inches, double inchesAFoot) {
        assertThat(LeastSlope.solid(Sizes.pipe(inches, 0.010)).number() * 12).isCloseTo(inchesAFoot, within(1e-9));
    }

    /** G-02: 1/16, 1/8 and 1/4 in a foot are 0.521, 1.042 and 2.083%. */
    @ParameterizedTest(name = "{0} in: {1}%")
    @CsvSource({"8, 0.521", "4, 1.042", "2, 2.083"})
    void leastSlopeInPercent(double inches, double percent) {
        assertThat(LeastSlope.solid(Sizes.pipe(inches, 0.010)).number() * 100).isCloseTo(percent, within(0.0005));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void drainIsAsLongAsTheTakeoffSays(Path sample) {
        var dossier = Samples.bid(sample).dossier();
        Network network = Network.of(dossier.job(), dossier.book());
        for (Quantity quantity : dossier.takeoff().quantities()) {
            if (quantity.measure() == Measure.DRAIN_PIPE) {
                String run = quantity.id().substring(0, quantity.id().indexOf('.'));
                double laid = network.ofRun(run).stream()
                        .mapToDouble(r -> r.length().number())
                        .sum();
                assertThat(laid).isCloseTo(quantity.value().doubleValue(), within(1e-9));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void stationsRunFromEndToEndWithKnownLevels(Path sample) {
        var dossier = Samples.bid(sample).dossier();
        for (Reach reach : Network.of(dossier.job(), dossier.book()).reaches()) {
            List<Station> stations = reach.stations();
            assertThat(stations.get(0).at().feet()).as(reach.label()).isCloseTo(0, within(1e-9));
            assertThat(stations.get(stations.size() - 1).at().feet())
                    .isCloseTo(reach.length().number(), within(1e-9));
            assertThat(stations).extracting(Station::at).isSorted();
            if (reach.kind() != ReachKind.SUMP_DISCHARGE) {
                assertThat(stations).allSatisfy(s -> assertThat(s.invert()).isPresent());
                assertThat(stations).allSatisfy(s -> assertThat(s.ground()).isPresent());
            }
        }
    }

    /** What is printed as a formula is what was computed. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void everyFormulaGivesItsValue(Path sample) {
        var dossier = Samples.bid(sample).dossier();
        Network network = Network.of(dossier.job(), dossier.book());
        List<Working> workings = new ArrayList<>();
        for (Reach reach : network.reaches()) {
            workings.add(reach.length());
            reach.fall().ifPresent(fall -> workings.add(fall.slope()));
            reach.flow().full().ifPresent(full -> workings.add(full.gpm()));
            reach.flow().inflow().ifPresent(in -> workings.addAll(List.of(in.low(), in.high())));
            Optional.of(reach).flatMap(one -> one.flow().share()).ifPresent(workings::add);
            reach.cover().start().ifPresent(workings::add);
            reach.cover().end().ifPresent(workings::add);
        }
        dossier.job().water().drains().forEach(drain -> {
            FootingBottom bottom = FootingBottom.of(dossier.job(), drain);
            bottom.start().ifPresent(workings::add);
            bottom.end().ifPresent(workings::add);
        });
        dossier.job().water().outlets().stream()
                .filter(o -> o.kind() == OutletKind.SUMP)
                .forEach(outlet -> {
                    SumpDesign design = SumpDesign.of(
                            dossier.job(),
                            dossier.book(),
                            outlet,
                            network.arriving(outlet.label()).orElseThrow());
                    workings.addAll(List.of(design.needed(), design.storage(), design.wanted()));
                    design.shortestCycle().ifPresent(workings::add);
                    design.head().ifPresent(head -> workings.add(head.total()));
                });
        OutletChoice.of(dossier.job(), dossier.book(), network)
                .considered()
                .forEach(considered -> workings.addAll(List.of(considered.available(), considered.needed())));
        List<Worked> worked =
                workings.stream().flatMap(w -> Recomputed.under(w).stream()).toList();
        assertThat(worked).hasSizeGreaterThan(50);
        for (Worked each : worked) {
            assertThat(Recomputed.evaluate(each))
                    .as(each.name() + ": " + each.line())
                    .isCloseTo(each.number(), within(1e-9 * Math.max(1, Math.abs(each.number()))));
        }
    }

    static List<Path> samples() {
        return Samples.papered();
    }

    /** A level points at the place of the job that states it, whichever way the water runs. */
    @Test
    void levelsPointAtTheJob() {
        Reach drain = only(network(new WaterJob()), "D1");
        assertThat(drain.fall().orElseThrow().start().source()).isEqualTo("/water/drains/0/startInvert");
        assertThat(drain.fall().orElseThrow().end().source()).isEqualTo("/water/drains/0/endInvert");
        Reach turned = only(network(new WaterJob().drain(92.2, 92.6).teeAt(TeeAt.START)), "D1");
        assertThat(turned.fall().orElseThrow().start().source()).isEqualTo("/water/drains/0/endInvert");
        assertThat(drain.length().inputs().get(0).source()).isEqualTo("/walls/0/length");
        Reach main = only(network(new WaterJob()), "M1");
        assertThat(main.length().inputs().get(0).source()).isEqualTo("/water/mains/0/length");
        assertThat(main.fall().orElseThrow().end().source()).isEqualTo("/water/mains/0/endInvert");
    }
}
