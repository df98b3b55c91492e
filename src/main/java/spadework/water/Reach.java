package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.pricebook.Pipe;
import spadework.water.flow.FullPipe;
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
 * @param full capacity by its own fall; empty where it does not fall
 * @param own what comes into it along its own length; empty where that is not known
 * @param inflow own and all that joins it, in gpm; empty where a part of it is not known
 * @param share high end of the inflow as percent of the capacity
 * @param coverStart soil over the pipe where its water comes in, in feet, where the ground's level is known
 * @param coverEnd the same where its water leaves
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
        Optional<FullPipe> full,
        Optional<Range> own,
        Optional<Range> inflow,
        Optional<Worked> share,
        Optional<Worked> coverStart,
        Optional<Worked> coverEnd) {

    public Reach {
        stations = List.copyOf(stations);
    }

    /** True when it falls in the direction in which its water is to run. */
    public boolean falls() {
        return fall.map(f -> f.drop().number() > 0).orElse(false);
    }
}
