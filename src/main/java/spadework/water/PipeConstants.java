// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.working.Listed;

/** The numbers of a pipe that its flow depends on, each with the standard that it was taken from. */
public final class PipeConstants {
    private PipeConstants() {}

    /** Inside diameter in feet. */
    public static Listed inside(Pipe pipe) {
        return Listed.of("D", "inside diameter of the pipe", pipe.inside().feet(), Unit.FOOT, pipe.standard());
    }

    /** Inside diameter in inches. */
    public static Listed insideInches(Pipe pipe) {
        return Listed.of("d", "inside diameter of the pipe", pipe.inside().inches(), Unit.INCH, pipe.standard());
    }

    /** Manning's n, full pipe. */
    public static Listed roughness(Pipe pipe) {
        return Listed.of("n", "Manning's n of the pipe", pipe.manning(), Unit.NONE, pipe.standard());
    }
}
