// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.pricebook.Pipe;
import spadework.working.Listed;
import spadework.working.Worked;

/**
 * A pipe between two places, in the direction in which its water is to run. A footing drain with its tee in the
 * middle has two of them, one on each side.
 *
 * @param label the run's label; with {@code /1} (from its start) or {@code /2} (from its end) where it has two
 * @param run label of the run in the job; of the outlet, for a sump's discharge pipe
 * @param into label of the run or outlet that takes its water; empty for a sump's discharge pipe
 * @param length along the pipe, as the takeoff measures it
 * @param bends counted bends whose place along the pipe was not measured
 * @param stations from the end where water comes in, in order
 * @param fall empty where an invert was not measured, and for a pipe under pressure
 * @param leastSlope the least slope for its kind and size
 */
public record Reach(
        String label,
        String run,
        ReachKind kind,
        String into,
        Pipe pipe,
        Worked length,
        int bends,
        List<Station> stations,
        Optional<Fall> fall,
        Listed leastSlope,
        ReachFlow flow,
        ReachCover cover) {

    public Reach {
        stations = List.copyOf(stations);
    }
}
