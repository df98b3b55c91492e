// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import spadework.paperwork.work.OutletWork;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.WallWork;

/**
 * What will be done.
 *
 * @param engineer who pays the engineer's visit: {@code us}, {@code you}; empty where none is due
 */
public record ProposalWork(List<WallWork> walls, List<PipeWork> runs, List<OutletWork> outlets, String engineer) {

    public ProposalWork {
        walls = List.copyOf(walls);
        runs = List.copyOf(runs);
        outlets = List.copyOf(outlets);
    }
}
