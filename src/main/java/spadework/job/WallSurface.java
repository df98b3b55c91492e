// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * The face of a wall, and what is done to it.
 *
 * @param strip codes of the items that take a failed system off; empty when there is none
 */
public record WallSurface(WallKind kind, Condition condition, List<String> strip, Finish finish) {

    public WallSurface {
        strip = List.copyOf(strip);
    }

    WallSurface withFinish(Finish other) {
        return new WallSurface(kind, condition, strip, other);
    }
}
