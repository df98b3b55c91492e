// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.measure.UnreadableMeasure;
import spadework.money.Dollars;

/**
 * How unsure depth, production and soil are. The usual figures are common practice, no source; put your own in.
 *
 * @param depth standard deviation of the depth of each wall, each on its own; normal
 * @param production standard deviation of what all crews do in an hour, together, of what the book says; normal, not
 *     under a quarter of it
 * @param soil how often the soil turns out one type worse, B for A and C for B
 */
public record Uncertainty(Length depth, Percent production, Percent soil) {
    /** What is taken where nothing is typed: 3 in, 15%, 10%. */
    public static final Uncertainty USUAL = new Uncertainty(Length.ofInches(3), Percent.of("15"), Percent.of("10"));

    private static final double SLOWEST = 0.25;

    /** What was typed, and what is wrong with it. */
    public record Typed(Uncertainty uncertainty, List<Fault> faults) {}

    /** Reads {@code depth=4 in,production=20%,soil=10%}; what is left out is usual. */
    public static Typed read(String typed) {
        Uncertainty read = USUAL;
        List<Fault> faults = new ArrayList<>();
        for (Map.Entry<String, String> one : Settings.pairs(typed)) {
            try {
                read = read.with(one.getKey(), one.getValue());
            } catch (UnreadableMeasure unreadable) {
                faults.add(new Fault(
                        Place.ofFile("--range " + one.getKey()),
                        "\"" + one.getValue() + "\"",
                        unreadable.allowed(),
                        unreadable.fix()));
            }
        }
        return new Typed(read, faults);
    }

    private Uncertainty with(String name, String value) throws UnreadableMeasure {
        return switch (name) {
            case "depth" -> new Uncertainty(Length.parse(value), production, soil);
            case "production" -> new Uncertainty(depth, Settings.share(value, 0, 100), soil);
            case "soil" -> new Uncertainty(depth, production, Settings.share(value, 0, 100));
            default -> throw new UnreadableMeasure("depth, production, soil", "write one of these before the \"=\"");
        };
    }

    /** What the company's rules would ask for the job as it may turn out. */
    public Simulation<Dollars> prices(Case job, int runs, long seed) {
        return Simulation.of(runs, seed, draws -> turnedOut(job, draws).quote().total());
    }

    private Case turnedOut(Case job, RandomDraws draws) {
        Case now = job;
        for (Wall wall : job.job().walls()) {
            now = now.deeper(wall.label(), Length.ofInches(draws.normal(0, depth.inches())));
        }
        double pace = draws.normal(1, production.fraction().doubleValue());
        now = now.producing(BigDecimal.valueOf(Math.max(SLOWEST, pace)));
        boolean worse = draws.chance(soil.fraction().doubleValue());
        return worse ? now.in(worse(job.job().site().soil().type())) : now;
    }

    private static SoilType worse(SoilType type) {
        return switch (type) {
            case STABLE_ROCK -> SoilType.A;
            case A -> SoilType.B;
            case B, C -> SoilType.C;
            case NOT_CLASSED -> SoilType.NOT_CLASSED;
        };
    }
}
