// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Optional;
import spadework.measure.Area;
import spadework.measure.FlowRate;
import spadework.measure.RainRate;
import spadework.measure.Unit;
import spadework.water.flow.Flow;
import spadework.water.flow.Roof;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;

/** Water from a roof by the codes' factor (H-18). */
public final class RoofFigure {
    private RoofFigure() {}

    /**
     * What is known of a roof in the rain.
     *
     * @param area of the roof in plan, above 0
     */
    public record Known(Optional<Area> area, Optional<RainRate> rain, Optional<FlowRate> flow) {}

    /**
     * Finds what is left out.
     *
     * @throws WrongInputs unless two of the three are given
     */
    public static Answer of(Known known) throws WrongInputs {
        String leftOut = new Inputs()
                .take("area", known.area().isPresent())
                .take("rain", known.rain().isPresent())
                .take("flow", known.flow().isPresent())
                .leftOut();
        Optional<Given> a =
                known.area().map(v -> Inputs.given("A", "area of the roof in plan", v.squareFeet(), Unit.SQUARE_FOOT));
        Optional<Given> i = known.rain().map(v -> Inputs.given("i", "rain", v.inchesPerHour(), Unit.INCH_PER_HOUR));
        Optional<Given> q =
                known.flow().map(v -> Inputs.given("Q", "flow", v.gallonsPerMinute(), Unit.GALLON_PER_MINUTE));
        return switch (leftOut) {
            case "--flow" -> {
                Worked gpm = Roof.flow(a.get(), i.get());
                yield Answer.of(gpm, Flow.cfs("Qc", gpm.name(), gpm));
            }
            case "--area" -> Answer.of(Roof.area(q.get(), i.get()));
            default -> {
                Worked like = Roof.area(q.get(), a.get());
                yield Answer.of(Worked.of(
                        "i",
                        "rain that gives that flow",
                        like.number(),
                        Unit.INCH_PER_HOUR,
                        new Formula(like.formula(), like.source()),
                        q.get(),
                        a.get()));
            }
        };
    }
}
