// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.Optional;
import spadework.water.flow.FullPipe;
import spadework.working.Worked;

/**
 * What flows in a reach, and what it can carry.
 *
 * @param full capacity by its own fall; empty where it does not fall
 * @param own what comes into it along its own length; empty where that is not known
 * @param inflow own and all that joins it, in gpm; empty where a part of it is not known
 * @param share high end of the inflow as percent of the capacity
 */
public record ReachFlow(Optional<FullPipe> full, Optional<Range> own, Optional<Range> inflow, Optional<Worked> share) {}
