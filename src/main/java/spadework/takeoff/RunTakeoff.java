// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.ground.Overlap;
import spadework.ground.PitOverlap;
import spadework.ground.RunOverlap;
import spadework.ground.SumpHole;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Protection;
import spadework.job.SolidRun;
import spadework.job.TestPit;
import spadework.job.Water;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.BodyDug;
import spadework.takeoff.wall.DugWall;
import spadework.water.Pipes;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;

/** Solid pipe in trenches away from the house, and where it ends. */
public final class RunTakeoff {
    private RunTakeoff() {}

    private enum Kind {
        MAIN(Measure.MAIN_PIPE, Measure.MAIN_BEND),
        ROOF_LINE(Measure.ROOF_PIPE, Measure.ROOF_BEND);

        private final Measure pipe;
        private final Measure bend;

        Kind(Measure pipe, Measure bend) {
            this.pipe = pipe;
            this.bend = bend;
        }

        /** Where the job states the run. */
        String pointer(Water water, SolidRun run) {
            return switch (this) {
                case MAIN -> "/water/mains/" + water.mains().indexOf(run);
                case ROOF_LINE -> "/water/roofLines/" + water.roofLines().indexOf(run);
            };
        }

        DigBody body(Job job, SolidRun run) {
            return switch (this) {
                case MAIN -> DigBodies.main(job, run);
                case ROOF_LINE -> DigBodies.roofLine(job, run);
            };
        }

        Optional<RunOverlap> shared(Job job, SolidRun run) {
            return switch (this) {
                case MAIN -> RunOverlap.ofMain(job, run);
                case ROOF_LINE -> RunOverlap.ofRoofLine(job, run);
            };
        }
    }

    /** The main of a footing drain. */
    static List<Driven> main(Job job, PriceBook book, SolidRun run, TopsoilShare topsoil, TakeoffSection section) {
        return run(job, book, run, topsoil, section, Kind.MAIN);
    }

    /** A line of roof water, with the downspouts that run into it. */
    static List<Driven> roofLine(Job job, PriceBook book, SolidRun run, TopsoilShare topsoil, TakeoffSection section) {
        List<Driven> driven = new ArrayList<>(run(job, book, run, topsoil, section, Kind.ROOF_LINE));
        List<Downspout> joined = job.water().downspouts().stream()
                .filter(downspout -> downspout.into().equals(run.label()))
                .toList();
        QuantityCollector collector =
                new QuantityCollector(section, run.label(), Stretch.whole(Conditions.everywhere(job)));
        collector.add(Measure.DOWNSPOUT, count(Measure.DOWNSPOUT, joined.size(), "downspouts into " + run.label()));
        collector.add(Measure.FLOW_TEST, count(Measure.FLOW_TEST, 1, "each roof line is tested"));
        driven.addAll(collector.found());
        return driven;
    }

    private static List<Driven> run(
            Job job, PriceBook book, SolidRun run, TopsoilShare topsoil, TakeoffSection section, Kind kind) {
        QuantityCollector collector =
                new QuantityCollector(section, run.label(), Stretch.whole(Conditions.inTrench(job, run)));
        String at = kind.pointer(job.water(), run);
        Given length = Given.of("L", "length of the run", run.length().feet(), Unit.FOOT, at + "/length");
        collector.add(
                kind.pipe,
                QuantityCollector.counted(kind.pipe, length.number(), "L", "length of the run", length),
                run.item().stream().toArray(String[]::new));
        collector.add(kind.bend, count(kind.bend, run.bends(), at + "/bends"));
        DigBody body = kind.body(job, run);
        Optional<RunOverlap> shared = kind.shared(job, run);
        Worked dug = dug(
                body,
                "pipe trench, bank",
                shared.map(RunOverlap::overlap).stream().toList());
        Worked volume = DrainTakeoff.pipeVolume("P", length, pipe(run, book, kind.pipe));
        double area = body.areaAtGrade() - shared.map(RunOverlap::areaAtGrade).orElse(0.0);
        ground(collector, body, dug, volume, topsoil.over("To", area));
        return collector.found();
    }

    /** The soil of a body away from the walls, its shield, and the fill round what is laid in it. */
    private static void ground(QuantityCollector collector, DigBody body, Worked dug, Worked laid, Worked top) {
        collector.add(Measure.PIPE_TRENCH, dug);
        if (body.entered() && body.bank().protection() == Protection.SHIELDED) {
            Given length = Given.of("L", "length of the trench", body.length(), Unit.FOOT, body.label());
            collector.add(
                    Measure.SHIELD,
                    QuantityCollector.counted(Measure.SHIELD, length.number(), "L", "length of the trench", length));
        }
        collector.add(
                Measure.BACKFILL,
                Worked.of(
                        "F",
                        "backfill, compacted",
                        dug.number() - laid.number() - top.number(),
                        Unit.CUBIC_YARD,
                        new Formula("T − P − To", "what is dug less what takes its place"),
                        dug,
                        laid,
                        top));
    }

    /** The trench of a drain's lead into a sump outside; the item for a lead pays for its pipe. */
    static List<Driven> lead(
            Job job, PriceBook book, FootingDrain drain, TopsoilShare topsoil, TakeoffSection section) {
        QuantityCollector collector = new QuantityCollector(
                section, FootingDrain.leadLabel(drain.label()), Stretch.whole(Conditions.everywhere(job)));
        DigBodies.lead(job, drain).ifPresent(body -> {
            Optional<RunOverlap> shared = RunOverlap.ofLead(job, drain);
            Given length = Given.of("L", "length of the lead", body.length(), Unit.FOOT, "drain " + drain.label());
            ground(
                    collector,
                    body,
                    dug(
                            body,
                            "trench of the lead, bank",
                            shared.map(RunOverlap::overlap).stream().toList()),
                    DrainTakeoff.pipeVolume("P", length, Pipes.main(job, book)),
                    topsoil.over(
                            "To",
                            body.areaAtGrade()
                                    - shared.map(RunOverlap::areaAtGrade).orElse(0.0)));
        });
        return collector.found();
    }

    /** A hole dug to look, filled again with what came out. */
    static List<Driven> testPit(Job job, TestPit pit, TakeoffSection section) {
        QuantityCollector collector =
                new QuantityCollector(section, pit.label(), Stretch.whole(Conditions.everywhere(job)));
        Worked dug = BodyDug.of("T", "test pit, bank", DigBodies.testPit(job.site(), pit));
        collector.add(Measure.PIPE_TRENCH, dug);
        collector.add(
                Measure.BACKFILL,
                Worked.of(
                        "F",
                        "backfill, compacted",
                        dug.number(),
                        Unit.CUBIC_YARD,
                        new Formula("T", "what is dug is filled"),
                        dug));
        return collector.found();
    }

    static Pipe pipe(SolidRun run, PriceBook book, Measure measure) {
        return Pipes.of(run, book, measure);
    }

    static List<Driven> outlet(Job job, PriceBook book, Outlet outlet, TopsoilShare topsoil, TakeoffSection section) {
        QuantityCollector collector =
                new QuantityCollector(section, outlet.label(), Stretch.whole(Conditions.everywhere(job)));
        Measure measure = switch (outlet.kind()) {
            case DAYLIGHT -> Measure.DAYLIGHT_OUTLET;
            case SUMP -> Measure.SUMP;
            case APPROVED_STORM -> Measure.STORM_OUTLET;
        };
        collector.add(measure, count(measure, 1, "outlet " + outlet.label()));
        if (outlet.kind() != OutletKind.SUMP) {
            return collector.found();
        }
        Optional<DigBody> trench = DigBodies.discharge(job, outlet);
        trench.ifPresent(body -> {
            Given length =
                    Given.of("L", "length of the discharge pipe", body.length(), Unit.FOOT, "outlet " + outlet.label());
            collector.add(
                    Measure.SUMP_DISCHARGE,
                    QuantityCollector.counted(
                            Measure.SUMP_DISCHARGE, length.number(), "L", "length of the run", length));
        });
        List<Driven> driven = new ArrayList<>(collector.found());
        trench.ifPresent(body -> {
            QuantityCollector run = new QuantityCollector(
                    section, Outlet.dischargeLabel(outlet.label()), Stretch.whole(Conditions.everywhere(job)));
            Given length =
                    Given.of("L", "length of the discharge pipe", body.length(), Unit.FOOT, "outlet " + outlet.label());
            Optional<RunOverlap> shared = RunOverlap.ofDischarge(job, outlet);
            ground(
                    run,
                    body,
                    dug(
                            body,
                            "trench of the discharge pipe, bank",
                            shared.map(RunOverlap::overlap).stream().toList()),
                    DrainTakeoff.pipeVolume("P", length, Pipes.discharge(book)),
                    topsoil.over(
                            "To",
                            body.areaAtGrade()
                                    - shared.map(RunOverlap::areaAtGrade).orElse(0.0)));
            driven.addAll(run.found());
        });
        driven.addAll(hole(job, outlet, topsoil, section));
        return driven;
    }

    private static List<Driven> hole(Job job, Outlet outlet, TopsoilShare topsoil, TakeoffSection section) {
        QuantityCollector collector =
                new QuantityCollector(section, outlet.label() + " pit", Stretch.whole(Conditions.everywhere(job)));
        DigBody body = SumpHole.of(job, outlet).body();
        Optional<PitOverlap> shared = PitOverlap.of(job, outlet);
        Worked dug = dug(
                body,
                "hole for the basin, bank",
                shared.map(PitOverlap::overlap).stream().toList());
        Listed basin = Listed.of(
                "Pb",
                "space the basin takes",
                SumpHole.basinVolume(outlet, body.deepest().feet()) / 27,
                Unit.CUBIC_YARD,
                "cylinder of the basin's diameter from its stone up to grade or floor");
        Worked taken = Worked.of(
                "P",
                "space the basin takes",
                basin.number(),
                Unit.CUBIC_YARD,
                new Formula("Pb", "volume of a cylinder"),
                basin);
        double area = body.areaAtGrade() - shared.map(PitOverlap::areaAtGrade).orElse(0.0);
        ground(collector, body, dug, taken, topsoil.over("To", area));
        return collector.found();
    }

    /**
     * A body's soil, without what is dug already where it begins or stands.
     *
     * @param shared none or one
     */
    private static Worked dug(DigBody body, String name, List<Overlap> shared) {
        if (shared.isEmpty()) {
            return BodyDug.of("T", name, body);
        }
        Worked whole = BodyDug.of("Th", name, body);
        Worked twice = DugWall.shared("U", shared).get(0).volume();
        return Worked.of(
                "T",
                name + ", without what is dug already",
                whole.number() + twice.number() / 27,
                Unit.CUBIC_YARD,
                new Formula("Th + " + twice.symbol() + " ÷ 27", "each place is dug once"),
                whole,
                twice);
    }

    static Worked count(Measure measure, int count, String where) {
        Given given = Given.of("x", measure.trade(), count, measure.unit(), where);
        return QuantityCollector.counted(measure, count, "x", "counted", given);
    }
}
