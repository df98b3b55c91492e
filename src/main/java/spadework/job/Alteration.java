// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;

/**
 * What an option or a change order adds to a job and takes away from it. What is added under a label that the job has
 * takes that one's place.
 *
 * @param walls walls to add
 * @param finishes another finish on a wall that stays as it is
 * @param drains drains to add; so with mains, roof lines, downspouts and outlets
 * @param items line items to add
 * @param restoration more of it, added to the job's own
 * @param takenAway labels of what falls away
 */
@RecordBuilder
public record Alteration(
        List<Wall> walls,
        List<NewFinish> finishes,
        List<Corner> corners,
        List<FootingDrain> drains,
        List<SolidRun> mains,
        List<SolidRun> roofLines,
        List<Downspout> downspouts,
        List<Outlet> outlets,
        List<ExtraItem> items,
        Optional<Restoration> restoration,
        TakenAway takenAway)
        implements AlterationBuilder.With {
    /** Nothing added, nothing taken away. */
    public static final Alteration NONE = new Alteration(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            TakenAway.NOTHING);

    public Alteration {
        walls = List.copyOf(walls);
        finishes = List.copyOf(finishes);
        corners = List.copyOf(corners);
        drains = List.copyOf(drains);
        mains = List.copyOf(mains);
        roofLines = List.copyOf(roofLines);
        downspouts = List.copyOf(downspouts);
        outlets = List.copyOf(outlets);
        items = List.copyOf(items);
    }

    /** The same additions, with that taken away. */
    public Alteration taking(TakenAway taken) {
        return withTakenAway(taken);
    }
}
