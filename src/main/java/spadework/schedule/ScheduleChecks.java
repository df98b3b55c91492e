// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.company.Company;
import spadework.company.WorkCalendar;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.LocateTicket;
import spadework.job.Schedule;
import spadework.job.WaitFor;

/** What the calendar of crews says against the schedule that the job promises; for the contractor only. */
public final class ScheduleChecks {
    private ScheduleChecks() {}

    /** Findings about days, gravest first; none once the job is closed. */
    public static List<Finding> of(Job job, Company company, CrewCalendar calendar) {
        List<Finding> found = new ArrayList<>();
        if (job.closed().isPresent()) {
            return found;
        }
        Schedule stated = job.schedule();
        WorkDays worked = new WorkDays(calendar.calendar());
        if (calendar.workingDays() > stated.workingDays()) {
            found.add(finding(
                    "days-over-schedule",
                    Severity.MUST,
                    "",
                    Map.of(
                            "days", days(calendar.workingDays()),
                            "work", days(calendar.daysOfWork()),
                            "waiting", days(calendar.daysOfWaiting()),
                            "weather", days(calendar.weatherDays()),
                            "stated", days(stated.workingDays()),
                            "crews", crews(calendar.crews()))));
        }
        if (calendar.finish().isAfter(stated.latestFinish())) {
            found.add(finding(
                    "finish-after-schedule",
                    Severity.MUST,
                    "",
                    Map.of(
                            "start", calendar.start().toString(),
                            "finish", calendar.finish().toString(),
                            "stated", stated.latestFinish().toString())));
        }
        ticketRunsOut(job, calendar).ifPresent(found::add);
        int room = worked.between(stated.earliestStart(), stated.latestFinish());
        if (stated.workingDays() > room) {
            found.add(finding(
                    "schedule-too-narrow",
                    Severity.MUST,
                    "",
                    Map.of(
                            "stated",
                            days(stated.workingDays()),
                            "room",
                            days(room),
                            "from",
                            stated.earliestStart().toString(),
                            "to",
                            stated.latestFinish().toString())));
        }
        if (calendar.start().isAfter(worked.from(stated.earliestStart()))) {
            found.add(finding(
                    "start-before-ready",
                    Severity.MUST,
                    "",
                    Map.of(
                            "stated",
                            stated.earliestStart().toString(),
                            "start",
                            calendar.start().toString())));
        }
        for (WaitFor what : WaitFor.values()) {
            if (calendar.waits().isUnknown(what)) {
                found.add(new Finding(
                        "wait-unknown",
                        Severity.ADVISE,
                        what.key(),
                        Map.of("what", words(what), "days", days(what.usual())),
                        what.source()));
            }
        }
        if (company.calendar().isEmpty()) {
            found.add(finding(
                    "calendar-usual",
                    Severity.ADVISE,
                    "",
                    Map.of(
                            "crews", crews(calendar.crews()),
                            "hours", WorkCalendar.USUAL.hoursPerDay().toPlainString() + " h",
                            "weather", WorkCalendar.USUAL.weather().text())));
        }
        return found;
    }

    /** Whether the trench stands open, by the calendar, after the last day of the locate ticket. */
    private static Optional<Finding> ticketRunsOut(Job job, CrewCalendar calendar) {
        Optional<LocalDate> last =
                calendar.openDays().stream().map(WorkDay::date).max(Comparator.naturalOrder());
        return job.site()
                .locateTicket()
                .flatMap(LocateTicket::until)
                .filter(until -> last.filter(until::isBefore).isPresent())
                .map(until -> new Finding(
                        "locate-runs-out",
                        Severity.MUST,
                        "",
                        Map.of(
                                "until",
                                until.toString(),
                                "last",
                                last.orElseThrow().toString()),
                        "state one-call laws (from memory)"));
    }

    private static String days(int count) {
        return count == 1 ? "1 day" : count + " days";
    }

    private static String crews(int count) {
        return count == 1 ? "one crew" : count + " crews";
    }

    private static String words(WaitFor what) {
        return switch (what) {
            case LOCATE -> "the utility locate";
            case ENGINEER -> "the engineer's visit";
            case WALL_DRY -> "the drying of a washed wall";
            case COATING_CURE -> "the cure of the coating";
            case INSPECTION -> "the building inspection";
        };
    }

    private static Finding finding(String id, Severity severity, String about, Map<String, String> values) {
        return new Finding(id, severity, about, values, WorkCalendar.SOURCE);
    }
}
