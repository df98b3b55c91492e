package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import spadework.job.Downspout;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SolidRun;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.water.Pipes;
import spadework.working.Given;
import spadework.working.Worked;

/** Solid pipe in trenches away from the house, and where it ends. */
public final class RunTakeoff {
    private RunTakeoff() {}

    /** The main of a footing drain. */
    static List<Driven> main(Job job, PriceBook book, SolidRun run, TakeoffSection section) {
        return run(job, book, run, section, "mains", job.water().mains(), Measure.MAIN_PIPE, Measure.MAIN_BEND);
    }

    /** A line of roof water, with the downspouts that run into it. */
    static List<Driven> roofLine(Job job, PriceBook book, SolidRun run, TakeoffSection section) {
        List<Driven> driven = new ArrayList<>(run(
                job, book, run, section, "roofLines", job.water().roofLines(), Measure.ROOF_PIPE, Measure.ROOF_BEND));
        List<Downspout> joined = job.water().downspouts().stream()
                .filter(downspout -> downspout.into().equals(run.label()))
                .toList();
        Tally tally = new Tally(section, run.label(), Conditions.everywhere(job));
        tally.add(Measure.DOWNSPOUT, count(Measure.DOWNSPOUT, joined.size(), "downspouts into " + run.label()));
        tally.add(Measure.FLOW_TEST, count(Measure.FLOW_TEST, 1, "each roof line is tested"));
        driven.addAll(tally.found());
        return driven;
    }

    private static List<Driven> run(
            Job job,
            PriceBook book,
            SolidRun run,
            TakeoffSection section,
            String key,
            List<SolidRun> among,
            Measure pipeMeasure,
            Measure bendMeasure) {
        Tally tally = new Tally(section, run.label(), Conditions.everywhere(job));
        String at = "/water/" + key + "/" + among.indexOf(run);
        Given length = Given.of("L", "length of the run", run.length().feet(), Unit.FOOT, at + "/length");
        tally.add(
                pipeMeasure,
                Tally.counted(pipeMeasure, length.number(), "L", "length of the run", length),
                run.item().stream().toArray(String[]::new));
        tally.add(bendMeasure, count(bendMeasure, run.bends(), at + "/bends"));
        Worked dug = trench(run, length, at);
        Worked volume = DrainTakeoff.pipeVolume("P", length, pipe(run, book, pipeMeasure));
        tally.add(Measure.PIPE_TRENCH, dug);
        tally.add(
                Measure.BACKFILL,
                Worked.of(
                        "F",
                        "backfill, compacted",
                        dug.number() - volume.number(),
                        Unit.CUBIC_YARD,
                        "T − P",
                        "what is dug less the pipe",
                        dug,
                        volume));
        return tally.found();
    }

    static Pipe pipe(SolidRun run, PriceBook book, Measure measure) {
        return Pipes.of(run, book, measure);
    }

    private static Worked trench(SolidRun run, Given length, String at) {
        Given width =
                Given.of("b", "width of the pipe trench", run.trench().width().feet(), Unit.FOOT, at + "/trench/width");
        Given depth = Given.of(
                "h", "mean depth of the pipe trench", run.trench().depth().feet(), Unit.FOOT, at + "/trench/depth");
        return Worked.of(
                "T",
                "pipe trench, bank",
                length.number() * width.number() * depth.number() / 27,
                Unit.CUBIC_YARD,
                "L × b × h ÷ 27",
                "upright pipe trench",
                length,
                width,
                depth);
    }

    static List<Driven> outlet(Job job, Outlet outlet, TakeoffSection section) {
        Tally tally = new Tally(section, outlet.label(), Conditions.everywhere(job));
        Measure measure = switch (outlet.kind()) {
            case DAYLIGHT -> Measure.DAYLIGHT_OUTLET;
            case SUMP -> Measure.SUMP;
            case APPROVED_STORM -> Measure.STORM_OUTLET;
        };
        tally.add(measure, count(measure, 1, "outlet " + outlet.label()));
        if (outlet.kind() == OutletKind.SUMP) {
            outlet.discharge()
                    .ifPresent(length -> tally.add(
                            Measure.SUMP_DISCHARGE,
                            Tally.counted(
                                    Measure.SUMP_DISCHARGE,
                                    length.feet(),
                                    "L",
                                    "length of the run",
                                    Given.of(
                                            "L",
                                            "length of the discharge pipe",
                                            length.feet(),
                                            Unit.FOOT,
                                            "outlet " + outlet.label()))));
        }
        return tally.found();
    }

    static Worked count(Measure measure, int count, String where) {
        Given given = Given.of("x", measure.trade(), count, measure.unit(), where);
        return Tally.counted(measure, count, "x", "counted", given);
    }
}
