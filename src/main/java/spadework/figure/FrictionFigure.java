// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Optional;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.water.flow.Flow;
import spadework.water.flow.HazenWilliams;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** Head lost to friction in a pipe under pressure (Hazen-Williams, H-34). */
public final class FrictionFigure {
    private static final String SOURCE = "Hazen-Williams formula, US units (H-34)";

    private FrictionFigure() {}

    /**
     * What is known of a pipe under pressure.
     *
     * @param inside inside diameter, above 0
     * @param c Hazen-Williams C; smooth plastic when it is left out
     * @param head lost over the length, above 0
     */
    public record Known(
            Optional<FlowRate> flow,
            Optional<Length> inside,
            Optional<Length> length,
            Optional<Length> head,
            Optional<Double> c) {}

    /**
     * Finds what is left out of flow, inside diameter, length and head.
     *
     * @throws WrongInputs unless three of the four are given
     */
    public static Answer of(Known known) throws WrongInputs {
        String leftOut = new Inputs()
                .take("flow", known.flow().isPresent())
                .take("id", known.inside().isPresent())
                .take("length", known.length().isPresent())
                .take("head", known.head().isPresent())
                .leftOut();
        Working rough = known.c()
                .<Working>map(v -> Inputs.given("C", "Hazen-Williams C", v, Unit.NONE))
                .orElse(HazenWilliams.PLASTIC);
        Optional<Given> q =
                known.flow().map(v -> Inputs.given("Q", "flow", v.gallonsPerMinute(), Unit.GALLON_PER_MINUTE));
        Optional<Given> d = known.inside().map(v -> Inputs.given("d", "inside diameter", v.inches(), Unit.INCH));
        Optional<Given> l = known.length().map(v -> Inputs.given("L", "length of the pipe", v.feet(), Unit.FOOT));
        Optional<Given> h = known.head().map(v -> Inputs.given("h", "head lost", v.feet(), Unit.FOOT));
        return switch (leftOut) {
            case "--head" -> {
                Worked lost = HazenWilliams.loss(HazenWilliams.perHundredFeet(q.get(), rough, d.get()), l.get());
                yield Answer.of(lost, HazenWilliams.psi(lost), velocity(q.get(), d.get()));
            }
            case "--length" -> Answer.of(length(h.get(), HazenWilliams.perHundredFeet(q.get(), rough, d.get())));
            case "--flow" -> Answer.of(flow(perHundred(h.get(), l.get()), rough, d.get()));
            default -> Answer.of(diameter(perHundred(h.get(), l.get()), rough, q.get()));
        };
    }

    private static Worked velocity(Working gpm, Working inches) {
        Worked cfs = Flow.cfs("Qc", "flow", gpm);
        double feet = inches.number() / 12;
        return Worked.of(
                "V",
                "velocity",
                cfs.number() / (Math.PI * feet * feet / 4),
                Unit.FOOT_PER_SECOND,
                new Formula("Qc ÷ (π × (d ÷ 12)^2 ÷ 4)", "flow over the area of a circle"),
                cfs,
                inches);
    }

    private static Worked length(Working head, Worked perHundred) {
        return Worked.of(
                "L",
                "length that loses that head",
                head.number() / perHundred.number() * 100,
                Unit.FOOT,
                new Formula("h ÷ h100 × 100", SOURCE),
                head,
                perHundred);
    }

    private static Worked perHundred(Working head, Working length) {
        return Worked.of(
                "h100",
                "head lost in 100 ft",
                head.number() / length.number() * 100,
                Unit.FOOT,
                new Formula("h ÷ L × 100", SOURCE),
                head,
                length);
    }

    private static Worked flow(Worked perHundred, Working c, Working inches) {
        double gpm =
                c.number() * Math.pow(perHundred.number() * Math.pow(inches.number(), 4.8655) / 1043.94, 1 / 1.852);
        return Worked.of(
                "Q",
                "flow that loses that head",
                gpm,
                Unit.GALLON_PER_MINUTE,
                new Formula("C × (h100 × d^4.8655 ÷ 1043.94)^(1 ÷ 1.852)", SOURCE),
                c,
                perHundred,
                inches);
    }

    private static Worked diameter(Worked perHundred, Working c, Working gpm) {
        double inches =
                Math.pow(1043.94 * Math.pow(gpm.number() / c.number(), 1.852) / perHundred.number(), 1 / 4.8655);
        return Worked.of(
                "d",
                "inside diameter that loses that head",
                inches,
                Unit.INCH,
                new Formula("(1043.94 × (Q ÷ C)^1.852 ÷ h100)^(1 ÷ 4.8655)", SOURCE),
                gpm,
                c,
                perHundred);
    }
}
