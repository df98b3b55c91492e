// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import spadework.job.WaitFor;
import spadework.pricebook.WorkStep;

/**
 * A working day of the job.
 *
 * @param number from 1
 * @param parts what is done, one after the other; none on a day on which work waits
 * @param waits what work waits for where nothing is done
 */
public record WorkDay(int number, LocalDate date, List<DayPart> parts, List<WaitFor> waits) {

    public WorkDay {
        parts = List.copyOf(parts);
        waits = List.copyOf(waits);
    }

    /** What is done, in order. */
    public List<WorkStep> steps() {
        return parts.stream().map(part -> part.stage().step()).distinct().toList();
    }

    /** Hours of each crew, unrounded, in the order in which they begin. */
    public Map<String, Double> crews() {
        Map<String, Double> hours = new LinkedHashMap<>();
        parts.forEach(part -> hours.merge(part.crew(), part.crewHours(), Double::sum));
        return hours;
    }

    /** Machines that run that day. */
    public Set<String> machines() {
        return parts.stream().map(DayPart::machine).flatMap(Optional::stream).collect(Collectors.toSet());
    }

    /** Hours of all crews that work at a time, unrounded. */
    public double team() {
        return parts.isEmpty() ? 0 : parts.get(parts.size() - 1).to();
    }

    /** Whether nothing is done and work waits. */
    public boolean isIdle() {
        return parts.isEmpty();
    }
}
