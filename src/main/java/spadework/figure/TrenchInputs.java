// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.Optional;
import spadework.job.SoilType;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.TrenchLimits;

/**
 * A trench as somebody measures it.
 *
 * @param length along the wall, above 0
 * @param depthStart grade to the footing's top at the start, above 0; to the trench's bottom when the footing is 0
 * @param depthEnd the same at the end
 * @param bottom width of the bottom beside the footing, above 0
 * @param projection of the footing beyond the wall, 0 or more
 * @param footing thickness of the footing, 0 or more
 * @param named the soil type as it was named; empty where the bank has a slope of its own
 * @param bank the outer bank
 * @param cornersOut outside corners that are dug with it
 * @param cornersIn inside corners that two trenches share
 */
public record TrenchInputs(
        Length length,
        Length depthStart,
        Length depthEnd,
        Length bottom,
        Length projection,
        Length footing,
        Optional<SoilType> named,
        Bank bank,
        int cornersOut,
        int cornersIn) {
    /**
     * The bank of a soil type, or the bank with a slope of one's own in soil that nobody has classed.
     *
     * @param side run for each foot of rise, 0 or more; 0 is an upright bank
     */
    public record Sides(Optional<SoilType> soil, Optional<Double> side) {

        /**
         * The bank that this makes.
         *
         * @throws WrongInputs unless one of the two is given
         */
        public Bank bank() throws WrongInputs {
            if (soil.isPresent() == side.isPresent()) {
                throw new WrongInputs(
                        soil.isPresent() ? "both --soil and --side" : "neither --soil nor --side",
                        "one of them: the slope follows from the soil, or is your own",
                        soil.isPresent()
                                ? "leave one out"
                                : "give --soil B, or --soil unknown where nobody has classed it");
            }
            return soil.map(Bank::of).orElseGet(() -> Bank.ofRun(side.get()));
        }
    }

    /** Grade to the trench's bottom at the deeper end. */
    Length deepest() {
        Length deeper = depthStart.compareTo(depthEnd) >= 0 ? depthStart : depthEnd;
        return deeper.plus(footing);
    }

    /** Whether an engineer designs it, and no table of slopes holds. */
    boolean isEngineered() {
        return TrenchLimits.isEngineered(deepest());
    }
}
