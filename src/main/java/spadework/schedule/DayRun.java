// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.company.WorkCalendar;
import spadework.job.WaitFor;
import spadework.pricebook.WorkStep;

/** Lays work onto days, one after the other. */
final class DayRun {
    /** Rest of floating point, in hours. */
    private static final double NOTHING = 1e-9;

    private final WorkDays workDays;
    private final double hours;
    private final int crews;
    private final List<WorkDay> days = new ArrayList<>();
    private Open open;

    /** @param hours a day, with overtime */
    DayRun(WorkCalendar calendar, LocalDate start, double hours, int crews) {
        this.workDays = new WorkDays(calendar);
        this.hours = hours;
        this.crews = crews;
        this.open = new Open(working(start));
    }

    /** A day that is being filled. */
    private static final class Open {
        private final LocalDate date;
        private final Set<WorkStep> steps = new LinkedHashSet<>();
        private final Map<String, Double> crews = new LinkedHashMap<>();
        private final Set<String> machines = new LinkedHashSet<>();
        private final List<WaitFor> waits = new ArrayList<>();
        private double used;

        private Open(LocalDate date) {
            this.date = date;
        }
    }

    /** Crews share the hours of a task. */
    void work(Task task) {
        double left = task.hours() / crews;
        while (left > NOTHING) {
            if (hours - open.used <= NOTHING) {
                next(after(open.date));
            }
            double take = Math.min(left, hours - open.used);
            open.used += take;
            open.steps.add(task.step());
            open.crews.merge(task.crew(), take * crews, Double::sum);
            task.machine().ifPresent(open.machines::add);
            left -= take;
        }
    }

    /** Nothing more is done before that day; days between are idle. */
    void waitUntil(LocalDate day, WaitFor what) {
        while (open.date.isBefore(working(day))) {
            if (open.used <= NOTHING) {
                open.waits.add(what);
            }
            next(after(open.date));
        }
    }

    private void next(LocalDate date) {
        close();
        open = new Open(date);
    }

    private void close() {
        days.add(new WorkDay(
                days.size() + 1,
                open.date,
                List.copyOf(open.steps),
                open.crews,
                List.copyOf(open.crews.keySet()),
                open.machines,
                open.waits,
                open.used));
    }

    /** The days, the last of them one of work. */
    List<WorkDay> done() {
        if (open.used > NOTHING) {
            close();
            open = new Open(after(open.date));
        }
        return List.copyOf(days);
    }

    LocalDate working(LocalDate day) {
        return workDays.from(day);
    }

    LocalDate after(LocalDate day) {
        return working(day.plusDays(1));
    }

    /** So many working days later. */
    LocalDate after(LocalDate day, int workingDays) {
        LocalDate found = day;
        for (int i = 0; i < workingDays; i++) {
            found = after(found);
        }
        return found;
    }

    /** The last day on which that step is done. */
    Optional<LocalDate> last(WorkStep step) {
        Optional<LocalDate> found = open.steps.contains(step) ? Optional.of(open.date) : Optional.empty();
        return found.or(() -> days.stream()
                .filter(day -> day.steps().contains(step))
                .reduce((first, second) -> second)
                .map(WorkDay::date));
    }
}
