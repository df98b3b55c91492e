package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Perforated pipe beside the footing, with its fittings counted. */
final class DrainTakeoff {
    /** At most this far from cleanout to cleanout; common practice, no source. */
    private static final int CLEANOUT_FEET = 100;

    private DrainTakeoff() {}

    /**
     * The size of a drain's pipe.
     *
     * @throws IllegalArgumentException if the item has none; intake has checked that every pipe item does
     */
    static Pipe pipe(FootingDrain drain, PriceBook book) {
        return pipe(drain.item().map(book::get).orElseGet(() -> standard(book, Measure.DRAIN_PIPE)));
    }

    /** The drain that runs along a wall. */
    static Optional<FootingDrain> at(Job job, Wall wall) {
        return job.water().drains().stream()
                .filter(drain -> drain.along().contains(wall.label()))
                .findFirst();
    }

    static LineItem standard(PriceBook book, Measure measure) {
        return book.standardFor(measure).stream()
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no standard item for " + measure.trade()));
    }

    static Pipe pipe(LineItem item) {
        return item.pipe().orElseThrow(() -> new IllegalArgumentException(item.code() + " has no pipe size"));
    }

    /** What the pipe displaces along a length, cubic yards. */
    static Worked pipeVolume(String symbol, Working length, Pipe pipe) {
        Listed outside = StoneEnvelope.outside(pipe);
        return Worked.of(
                symbol,
                "space the pipe takes",
                Math.PI * outside.number() * outside.number() / 4 * length.number() / 27,
                Unit.CUBIC_YARD,
                "π × OD^2 ÷ 4 × " + length.symbol() + " ÷ 27",
                "volume of a cylinder",
                outside,
                length);
    }

    static List<Driven> of(Job job, PriceBook book, FootingDrain drain, TakeoffSection section) {
        Tally tally = new Tally(section, drain.label(), Conditions.everywhere(job));
        Pipe pipe = pipe(drain, book);
        Worked length = length(job, drain);
        tally.add(Measure.DRAIN_PIPE, length, drain.item().stream().toArray(String[]::new));
        long corners = cornersOn(job, drain).size();
        tally.add(Measure.DRAIN_BEND, given(Measure.DRAIN_BEND, corners, "corners between the drain's walls"));
        boolean intoMain = job.water().mains().stream().anyMatch(main -> main.label().equals(drain.into()));
        tally.add(Measure.DRAIN_TEE, given(Measure.DRAIN_TEE, intoMain ? 1 : 0, "where the drain meets " + drain.into()));
        tally.add(Measure.DRAIN_ADAPTER,
                given(Measure.DRAIN_ADAPTER, intoMain && pipe.corrugated() ? 1 : 0, "corrugated meets smooth"));
        Listed stick = Listed.of("k", "length of a stick or coil", pipe.stick().feet(), Unit.FOOT, pipe.standard());
        tally.add(Measure.DRAIN_COUPLING,
                Tally.counted(Measure.DRAIN_COUPLING,
                        Math.max(0, WholePackages.roundUp(length.number() / stick.number()) - 1),
                        "max(ceil(Lp ÷ k) − 1, 0)", "a coupling at each joint", length, stick));
        int highEnds = highEnds(drain);
        Given ends = Given.of("e", "high ends", highEnds, Unit.EACH, "teeAt of drain " + drain.label());
        tally.add(Measure.CLEANOUT,
                Tally.counted(Measure.CLEANOUT,
                        highEnds * cleanoutsFromEachEnd(length, highEnds),
                        "e × ceil(Lp ÷ e ÷ " + CLEANOUT_FEET + ")",
                        "one at each high end and at least every 100 ft; common practice, no source", length, ends));
        tally.add(Measure.FLOW_TEST, given(Measure.FLOW_TEST, 1, "each drain is tested"));
        return tally.found();
    }

    static int highEnds(FootingDrain drain) {
        return drain.teeAt() == TeeAt.MIDDLE ? 2 : 1;
    }

    private static double cleanoutsFromEachEnd(Worked length, int highEnds) {
        return WholePackages.roundUp(length.number() / highEnds / CLEANOUT_FEET);
    }

    /** Cleanouts from each high end to the tee, the one at the end counted with them. */
    static double cleanoutsFromEachEnd(Job job, FootingDrain drain) {
        return cleanoutsFromEachEnd(length(job, drain), highEnds(drain));
    }

    private static Worked given(Measure measure, long count, String where) {
        Given given = Given.of("x", measure.trade(), count, measure.unit(), where);
        return Tally.counted(measure, count, "x", "counted", given);
    }

    private static List<Corner> cornersOn(Job job, FootingDrain drain) {
        return job.corners().stream()
                .filter(corner -> drain.along().contains(corner.first().wall())
                        && drain.along().contains(corner.second().wall()))
                .toList();
    }

    /** Wall lengths, and at each corner what the pipe's centre line gains outside or loses inside. */
    private static Worked length(Job job, FootingDrain drain) {
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (String label : drain.along()) {
            WallMeasures m = WallMeasures.of(job, job.getWall(label));
            String symbol = "L" + (inputs.size() + 1);
            inputs.add(Given.of(symbol, "length of wall " + label, m.length().number(), Unit.FOOT, m.length().source()));
            formula.append(formula.isEmpty() ? "" : " + ").append(symbol);
            sum += m.length().number();
        }
        for (Corner corner : cornersOn(job, drain)) {
            Worked offset = offset("c" + (inputs.size() + 1), job, corner);
            inputs.add(offset);
            boolean adds = corner.kind() == CornerKind.OUTSIDE;
            formula.append(adds ? " + " : " − ").append(offset.symbol());
            sum += adds ? offset.number() : -offset.number();
        }
        return Worked.of("Lp", "perforated pipe", sum, Unit.FOOT, formula.toString(),
                "centre line of the pipe", inputs.toArray(Working[]::new));
    }

    /** Both walls' offset of the pipe from the wall's face, p + B ÷ 2. */
    private static Worked offset(String symbol, Job job, Corner corner) {
        WallMeasures a = WallMeasures.of(job, job.getWall(corner.first().wall()));
        WallMeasures b = WallMeasures.of(job, job.getWall(corner.second().wall()));
        return Worked.of(symbol,
                "corner " + corner.first().wall() + " to " + corner.second().wall(),
                a.projection().number() + a.width().number() / 2 + b.projection().number() + b.width().number() / 2,
                Unit.FOOT, "p1 + B1 ÷ 2 + p2 + B2 ÷ 2", "offset of the pipe's centre line from both faces",
                named("p1", a.projection()), named("B1", a.width()), named("p2", b.projection()), named("B2", b.width()));
    }

    private static Given named(String symbol, Given given) {
        return new Given(symbol, given.name(), given.value(), given.unit(), given.source());
    }
}
