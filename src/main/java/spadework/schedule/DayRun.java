// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import spadework.company.WorkCalendar;
import spadework.job.WaitFor;

/**
 * Lays work onto days. Everybody works on what comes first in the order of the work and may begin; while that waits,
 * what comes after it and need not wait is done.
 */
final class DayRun {
    /** Rest of floating point, in hours. */
    private static final double NOTHING = 1e-9;

    private final WorkDays workDays;
    private final double hours;
    private final int crews;
    private final List<WorkDay> days = new ArrayList<>();
    private LocalDate date;
    private List<DayPart> parts = new ArrayList<>();
    private double used;

    /** @param hours a day, with overtime */
    DayRun(WorkCalendar calendar, LocalDate start, double hours, int crews) {
        this.workDays = new WorkDays(calendar);
        this.hours = hours;
        this.crews = crews;
        this.date = working(start);
    }

    /**
     * Does all of it.
     *
     * @param activities in the order of the work
     * @param waiting what an activity has to wait for once all is done that it needs
     * @return the days, the last of them one of work
     */
    List<WorkDay> work(List<Activity> activities, Function<Activity, List<Wait>> waiting) {
        List<Activity> open = new ArrayList<>(activities);
        while (!open.isEmpty()) {
            Optional<Activity> next =
                    due(open).filter(one -> wait(one, waiting).isEmpty()).findFirst();
            if (next.isPresent() && hours - used > NOTHING) {
                work(next.get());
                open.removeIf(Activity::isDone);
            } else {
                close(
                        next.isPresent()
                                ? List.of()
                                : due(open).findFirst().flatMap(first -> wait(first, waiting)).map(Wait::what).stream()
                                        .toList());
            }
        }
        if (used > NOTHING) {
            close(List.of());
        }
        return List.copyOf(days);
    }

    /** Those that need nothing that is still open, looked for no further than somebody asks. */
    private static Stream<Activity> due(List<Activity> open) {
        return open.stream().filter(one -> open.stream().noneMatch(one::needs));
    }

    private Optional<Wait> wait(Activity activity, Function<Activity, List<Wait>> waiting) {
        return waiting.apply(activity).stream()
                .filter(wait -> date.isBefore(working(wait.until())))
                .findFirst();
    }

    private void work(Activity activity) {
        List<DayPart> done = activity.work(date, used, hours - used, crews);
        parts.addAll(done);
        used = done.get(done.size() - 1).to();
    }

    private void close(List<WaitFor> waits) {
        days.add(new WorkDay(days.size() + 1, date, parts, parts.isEmpty() ? waits : List.of()));
        parts = new ArrayList<>();
        used = 0;
        date = after(date);
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
}
