// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Optional;
import spadework.measure.Area;
import spadework.measure.FlowRate;
import spadework.measure.LandArea;
import spadework.measure.RainRate;
import spadework.measure.Unit;
import spadework.water.flow.Flow;
import spadework.water.flow.Rational;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** Runoff from the ground by the rational method, Q = C × i × A (H-11). */
public final class RunoffFigure {
    private static final String SOURCE = "rational method (H-11)";

    private RunoffFigure() {}

    /**
     * What is known of the ground in the rain.
     *
     * @param area of the ground that drains there, above 0
     * @param c runoff coefficient, above 0, at most 1
     */
    public record Known(Optional<Area> area, Optional<Double> c, Optional<RainRate> rain, Optional<FlowRate> flow) {}

    /**
     * Finds what is left out.
     *
     * @throws WrongInputs unless three of the four are given, or if the coefficient comes out above 1
     */
    public static Answer of(Known known) throws WrongInputs {
        String leftOut = new Inputs()
                .take("area", known.area().isPresent())
                .take("c", known.c().isPresent())
                .take("rain", known.rain().isPresent())
                .take("flow", known.flow().isPresent())
                .leftOut();
        Optional<Worked> a =
                known.area().map(v -> Rational.acres(Inputs.given("A", "area", v.squareFeet(), Unit.SQUARE_FOOT)));
        Optional<Given> k = known.c().map(v -> Inputs.given("C", "runoff coefficient", v, Unit.NONE));
        Optional<Given> i = known.rain().map(v -> Inputs.given("i", "rain", v.inchesPerHour(), Unit.INCH_PER_HOUR));
        Optional<Worked> q = known.flow()
                .map(v -> Flow.cfs(
                        "Qc", "flow", Inputs.given("Q", "flow", v.gallonsPerMinute(), Unit.GALLON_PER_MINUTE)));
        return switch (leftOut) {
            case "--flow" -> {
                Worked cfs = Rational.flow(k.get(), i.get(), a.get());
                yield Answer.of(cfs, Flow.gpm("Qg", cfs.name(), cfs));
            }
            case "--area" -> {
                Worked acres = over("Aa", "area that gives that flow", Unit.ACRE, q.get(), k.get(), i.get());
                yield Answer.of(
                        acres,
                        Worked.of(
                                "A",
                                acres.name(),
                                acres.number() * LandArea.SQUARE_FEET_PER_ACRE,
                                Unit.SQUARE_FOOT,
                                new Formula("Aa × 43560", "43,560 sf in an acre"),
                                acres));
            }
            case "--rain" ->
                Answer.of(over("i", "rain that gives that flow", Unit.INCH_PER_HOUR, q.get(), k.get(), a.get()));
            default -> coefficient(over("C", "runoff coefficient", Unit.NONE, q.get(), i.get(), a.get()));
        };
    }

    private static Worked over(String symbol, String name, Unit unit, Working flow, Working one, Working other) {
        return Worked.of(
                symbol,
                name,
                flow.number() / (one.number() * other.number()),
                unit,
                new Formula(flow.symbol() + " ÷ (" + one.symbol() + " × " + other.symbol() + ")", SOURCE),
                flow,
                one,
                other);
    }

    private static Answer coefficient(Worked c) throws WrongInputs {
        if (c.number() > 1) {
            throw new WrongInputs(
                    "more water than the rain brings, C = " + c.valueText(),
                    "C at most 1",
                    "check --area, --rain and --flow");
        }
        return Answer.of(c);
    }
}
