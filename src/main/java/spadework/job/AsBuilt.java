// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.measure.Weight;

/**
 * What was built, or was built so far.
 *
 * @param finished the last day of work; empty while it goes on
 * @param stone delivered
 * @param loads truck loads hauled away
 * @param soilFound class of the soil as the competent person found it
 * @param actuals what single line items really took
 * @param inspections looks at the trench before anybody went in
 */
public record AsBuilt(
        LocalDate started,
        Optional<LocalDate> finished,
        List<BuiltWall> walls,
        List<BuiltPipe> pipes,
        Optional<Weight> stone,
        Optional<Integer> loads,
        Optional<SoilType> soilFound,
        List<FlowTest> flowTests,
        List<Actual> actuals,
        List<DayInspection> inspections,
        String note) {

    public AsBuilt {
        walls = List.copyOf(walls);
        pipes = List.copyOf(pipes);
        flowTests = List.copyOf(flowTests);
        actuals = List.copyOf(actuals);
        inspections = List.copyOf(inspections);
    }

    /** The wall as built; empty where it was not recorded. */
    public Optional<BuiltWall> wall(String label) {
        return walls.stream().filter(wall -> wall.label().equals(label)).findFirst();
    }

    /** The drain, main or roof line as built; empty where it was not recorded. */
    public Optional<BuiltPipe> pipe(String label) {
        return pipes.stream().filter(pipe -> pipe.label().equals(label)).findFirst();
    }
}
