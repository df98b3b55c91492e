// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.List;
import java.util.Optional;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.water.DrainLength;
import spadework.water.Pipes;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Perforated pipe beside the footing, with its fittings counted. */
public final class DrainTakeoff {
    private DrainTakeoff() {}

    /**
     * The size of a drain's pipe.
     *
     * @throws IllegalArgumentException if the item has none; intake has checked that every pipe item does
     */
    static Pipe pipe(FootingDrain drain, PriceBook book) {
        return Pipes.of(drain, book);
    }

    /** The drain that runs along a wall. */
    static Optional<FootingDrain> at(Job job, Wall wall) {
        return job.water().drains().stream()
                .filter(drain -> drain.along().contains(wall.label()))
                .findFirst();
    }

    /** What the pipe displaces along a length, cubic yards. */
    static Worked pipeVolume(String symbol, Working length, Pipe pipe) {
        Listed outside = StoneEnvelope.outside(pipe);
        return Worked.of(
                symbol,
                "space the pipe takes",
                Math.PI * outside.number() * outside.number() / 4 * length.number() / 27,
                Unit.CUBIC_YARD,
                new Formula("π × OD^2 ÷ 4 × " + length.symbol() + " ÷ 27", "volume of a cylinder"),
                outside,
                length);
    }

    static List<Driven> of(Job job, PriceBook book, FootingDrain drain, TakeoffSection section) {
        QuantityCollector collector =
                new QuantityCollector(section, drain.label(), Conditions.along(job, drain.along()));
        Pipe pipe = pipe(drain, book);
        Worked length = DrainLength.of(job, drain);
        collector.add(Measure.DRAIN_PIPE, length, drain.item().stream().toArray(String[]::new));
        long corners = DrainLength.corners(job, drain).size();
        collector.add(Measure.DRAIN_BEND, given(Measure.DRAIN_BEND, corners, "corners between the drain's walls"));
        boolean intoMain =
                job.water().mains().stream().anyMatch(main -> main.label().equals(drain.into()));
        collector.add(
                Measure.DRAIN_TEE, given(Measure.DRAIN_TEE, intoMain ? 1 : 0, "where the drain meets " + drain.into()));
        collector.add(
                Measure.DRAIN_ADAPTER,
                given(Measure.DRAIN_ADAPTER, intoMain && pipe.corrugated() ? 1 : 0, "corrugated meets smooth"));
        Listed stick = Listed.of("k", "length of a stick or coil", pipe.stick().feet(), Unit.FOOT, pipe.standard());
        collector.add(
                Measure.DRAIN_COUPLING,
                QuantityCollector.counted(
                        Measure.DRAIN_COUPLING,
                        Math.max(0, WholePackages.roundUp(length.number() / stick.number()) - 1),
                        "max(ceil(Lp ÷ k) − 1, 0)",
                        "a coupling at each joint",
                        length,
                        stick));
        int highEnds = highEnds(drain);
        Given ends = Given.of("e", "high ends", highEnds, Unit.EACH, "teeAt of drain " + drain.label());
        collector.add(
                Measure.CLEANOUT,
                QuantityCollector.counted(
                        Measure.CLEANOUT,
                        highEnds * cleanoutsFromEachEnd(length, highEnds),
                        "e × ceil(Lp ÷ e ÷ " + DrainLength.CLEANOUT_FEET + ")",
                        "one at each high end and at least every 100 ft; common practice, no source",
                        length,
                        ends));
        collector.add(Measure.FLOW_TEST, given(Measure.FLOW_TEST, 1, "each drain is tested"));
        return collector.found();
    }

    static int highEnds(FootingDrain drain) {
        return drain.teeAt() == TeeAt.MIDDLE ? 2 : 1;
    }

    private static double cleanoutsFromEachEnd(Worked length, int highEnds) {
        return WholePackages.roundUp(length.number() / highEnds / DrainLength.CLEANOUT_FEET);
    }

    /** Cleanouts from each high end to the tee, the one at the end counted with them. */
    static double cleanoutsFromEachEnd(Job job, FootingDrain drain) {
        return cleanoutsFromEachEnd(DrainLength.of(job, drain), highEnds(drain));
    }

    private static Worked given(Measure measure, long count, String where) {
        Given given = Given.of("x", measure.trade(), (double) count, measure.unit(), where);
        return QuantityCollector.counted(measure, (double) count, "x", "counted", given);
    }
}
