// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.water.flow.HazenWilliams;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * What a sump pump has to push against: the lift, and the friction of pipe and fittings (H-34, H-41).
 *
 * @param equivalent length of pipe that rubs as much as pipe and fittings together, feet
 * @param friction head lost in it at the pump's flow, feet
 * @param total lift and friction, feet
 */
public record SumpHead(Worked equivalent, Worked friction, Worked total) {
    private static final String FITTINGS = "equivalent lengths in plastic pipe, pump distributor's worksheet (H-41)";

    /**
     * At one flow; three elbows, a check valve and a union stand in the pipe (common practice, no source).
     *
     * @param lift from the water at which the pump stops to the highest point of the pipe, feet
     * @param length of the discharge pipe, feet
     * @param flow gpm, above zero
     */
    public static SumpHead of(Working lift, Working length, Working flow, Pipe pipe) {
        boolean small = pipe.nominal().inches() < 2 - 1e-9;
        String row = small ? FITTINGS + ", 1-1/2 in" : FITTINGS + ", 2 in";
        Listed elbow = Listed.of("e90", "length that a 90 degree elbow stands for", small ? 8 : 9, Unit.FOOT, row);
        Listed valve = Listed.of("ev", "the same for the check valve", small ? 13 : 17, Unit.FOOT, row);
        Listed union = Listed.of("eu", "the same for a union", small ? 1 : 2, Unit.FOOT, row);
        Worked equivalent = Worked.of(
                "Le",
                "length with fittings",
                length.number() + 3 * elbow.number() + valve.number() + union.number(),
                Unit.FOOT,
                new Formula(length.symbol() + " + 3 × e90 + ev + eu", "three elbows: common practice, no source"),
                length,
                elbow,
                valve,
                union);
        Worked per = HazenWilliams.perHundredFeet(flow, HazenWilliams.PLASTIC, PipeConstants.insideInches(pipe));
        Worked friction = HazenWilliams.loss(per, equivalent);
        Worked total = Worked.of(
                "H",
                "total head",
                lift.number() + friction.number(),
                Unit.FOOT,
                new Formula(lift.symbol() + " + hf", "lift and friction"),
                lift,
                friction);
        return new SumpHead(equivalent, friction, total);
    }
}
