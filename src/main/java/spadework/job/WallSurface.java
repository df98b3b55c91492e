// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * The face of a wall, and what is done to it.
 *
 * @param strip codes of the items that take a failed system off; empty when there is none
 */
@RecordBuilder
public record WallSurface(WallKind kind, Condition condition, List<String> strip, Finish finish)
        implements WallSurfaceBuilder.With {

    public WallSurface {
        strip = List.copyOf(strip);
    }
}
