// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spadework.job.WaitFor;
import spadework.pricebook.WorkStep;

/**
 * A working day of the job.
 *
 * @param number from 1
 * @param steps what is done, in order; empty on a day on which work waits
 * @param crews hours of each crew, unrounded
 * @param order in which the crews begin
 * @param machines that run that day
 * @param waits what work waits for where nothing is done
 * @param team hours of all crews that work at a time, unrounded; the longest of them where several do
 */
public record WorkDay(
        int number,
        LocalDate date,
        List<WorkStep> steps,
        Map<String, Double> crews,
        List<String> order,
        Set<String> machines,
        List<WaitFor> waits,
        double team) {

    public WorkDay {
        steps = List.copyOf(steps);
        crews = Map.copyOf(crews);
        order = List.copyOf(order);
        machines = Set.copyOf(machines);
        waits = List.copyOf(waits);
    }

    /** Whether nothing is done and work waits. */
    public boolean isIdle() {
        return steps.isEmpty();
    }
}
