// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Optional;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.measure.Slope;
import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.water.PipeConstants;
import spadework.water.flow.Flow;
import spadework.water.flow.FullPipe;
import spadework.water.flow.Manning;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** A round pipe that runs full by its own fall (Manning, H-01). */
public final class PipeFigure {
    private PipeFigure() {}

    /**
     * What is known of a pipe and its flow.
     *
     * @param diameter inside, above 0; a nominal size of the kind is taken as that size's inside
     * @param slope above 0
     * @param n Manning's n, above 0
     * @param kind a pipe of the price book instead of {@code n}
     */
    public record Known(
            Optional<Length> diameter,
            Optional<Slope> slope,
            Optional<FlowRate> flow,
            Optional<Double> n,
            Optional<PipeKind.Chosen> kind) {

        private Working roughness() throws WrongInputs {
            if (n.isPresent() == kind.isPresent()) {
                throw new WrongInputs(
                        n.isPresent() ? "both --n and --kind" : "neither --n nor --kind",
                        "either of them: a kind of pipe has its own n",
                        n.isPresent() ? "leave one out" : "give --n 0.013, or --kind with a pipe of the price book");
            }
            if (n.isPresent()) {
                return Inputs.given("n", "Manning's n of the pipe", n.get(), Unit.NONE);
            }
            PipeKind.Chosen chosen = kind.get();
            return PipeConstants.roughness(
                    chosen.size().orElse(chosen.kind().sizes().get(0).pipe()));
        }

        private Optional<Working> inside() {
            boolean solved = flow.isPresent() && slope.isPresent();
            Optional<Pipe> sold = diameter.isPresent()
                    ? kind.flatMap(chosen -> chosen.kind().size(diameter.get()))
                    : kind.flatMap(PipeKind.Chosen::size).filter(size -> !solved);
            return sold.<Working>map(PipeConstants::inside)
                    .or(() -> diameter.map(d -> Inputs.given("D", "inside diameter of the pipe", d.feet(), Unit.FOOT)));
        }
    }

    /**
     * Finds what is left out of diameter, slope and flow; with all three, the share of the capacity that is used.
     *
     * @throws WrongInputs unless two or three of them are given, and either {@code n} or {@code kind}
     */
    public static Answer of(Known known) throws WrongInputs {
        Working roughness = known.roughness();
        Optional<Working> inside = known.inside();
        if (inside.isPresent() && known.slope().isPresent() && known.flow().isPresent()) {
            return used(
                    inside.get(), given(known.slope().get()), given(known.flow().get()), roughness);
        }
        String leftOut = new Inputs()
                .take("diameter", inside.isPresent())
                .take("slope", known.slope().isPresent())
                .take("flow", known.flow().isPresent())
                .leftOut();
        return switch (leftOut) {
            case "--flow" -> capacity(inside.get(), given(known.slope().get()), roughness);
            case "--slope" -> slope(inside.get(), given(known.flow().get()), roughness);
            default ->
                known.kind()
                        .map(pipe -> PipeSize.of(
                                given(known.flow().get()), given(known.slope().get()), pipe.kind()))
                        .orElseGet(() -> PipeSize.of(
                                given(known.flow().get()), given(known.slope().get()), roughness));
        };
    }

    private static Answer capacity(Working inside, Working slope, Working roughness) {
        FullPipe full = Manning.full(inside, slope, roughness);
        return Answer.of(full.gpm(), full.cfs(), full.velocity());
    }

    private static Answer slope(Working inside, Given flow, Working roughness) {
        Worked ratio = Manning.slope(Flow.cfs("Qc", "flow", flow), inside, roughness);
        Worked percent = Worked.of(
                "Sp",
                "slope that just carries it",
                ratio.number() * 100,
                Unit.PERCENT,
                new Formula("S × 100", "a hundredth is a percent"),
                ratio);
        return Answer.of(percent, ratio);
    }

    private static Answer used(Working inside, Working slope, Given flow, Working roughness) {
        FullPipe full = Manning.full(inside, slope, roughness);
        Worked share = Worked.of(
                "u",
                "share of the capacity used",
                flow.number() / full.gpm().number() * 100,
                Unit.PERCENT,
                new Formula("Qi ÷ Q × 100", "inflow over capacity"),
                Inputs.given("Qi", flow.name(), flow.number(), flow.unit()),
                full.gpm());
        return Answer.of(full.gpm(), full.cfs(), full.velocity(), share);
    }

    private static Given given(FlowRate flow) {
        return Inputs.given("Qi", "flow", flow.gallonsPerMinute(), Unit.GALLON_PER_MINUTE);
    }

    private static Given given(Slope slope) {
        return Inputs.given("S", "slope", slope.ratio(), Unit.FOOT_PER_FOOT);
    }
}
