// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.LocateTicket;
import spadework.job.Schedule;
import spadework.job.Site;
import spadework.job.WaitFor;
import spadework.job.Waits;

/** The calendar against the schedule that the job promises, on both sides of each threshold. */
class ScheduleChecksTest {

    private static List<Finding> found(Schedule schedule, String hours) {
        DayBooks job = new DayBooks(DayBooks.calendar(1, "0", 5), schedule).dig(hours);
        return ScheduleChecks.of(job.job(), job.company(), job.laid());
    }

    private static Optional<Finding> find(List<Finding> found, String id) {
        return found.stream().filter(finding -> finding.id().equals(id)).findFirst();
    }

    @Test
    void sixtySixCrewDaysDoNotPassForTwenty() {
        Finding over = find(found(DayBooks.schedule("2026-09-07", "2026-12-31", 20), "528"), "days-over-schedule")
                .orElseThrow();
        assertThat(over.values()).containsEntry("days", "66 days").containsEntry("stated", "20 days");
    }

    @ParameterizedTest(name = "{0} h in {1} days: {2}")
    @CsvSource({"160, 20, false", "160.1, 20, true", "8, 1, false", "8.1, 1, true"})
    void daysPastTheScheduleAreFound(String hours, int stated, boolean isFound) {
        assertThat(find(found(DayBooks.schedule("2026-09-07", "2026-12-31", stated), hours), "days-over-schedule")
                        .isPresent())
                .isEqualTo(isFound);
    }

    /** Five days of work from Monday the 7th end on Friday the 11th. */
    @ParameterizedTest(name = "done by {0}: {1}")
    @CsvSource({"2026-09-11, false", "2026-09-10, true"})
    void finishPastTheScheduleIsFound(String finish, boolean isFound) {
        Optional<Finding> late = find(found(DayBooks.schedule("2026-09-07", finish, 4), "40"), "finish-after-schedule");
        assertThat(late.isPresent()).isEqualTo(isFound);
        late.ifPresent(finding -> assertThat(finding.values())
                .containsEntry("finish", "2026-09-11")
                .containsEntry("stated", finish));
    }

    /** Five days of digging from Monday the 7th stand open until Friday the 11th. */
    @ParameterizedTest(name = "ticket valid through {0}: {1}")
    @CsvSource({"2026-09-11, false", "2026-09-10, true"})
    void ticketThatRunsOutWhileATrenchIsOpenIsFound(String until, boolean isFound) {
        DayBooks books =
                new DayBooks(DayBooks.calendar(1, "0", 5), DayBooks.schedule("2026-09-07", "2026-12-31", 20)).dig("40");
        Job job = books.job();
        Site site =
                job.site().withLocateTicket(Optional.of(new LocateTicket("T-1", Optional.of(LocalDate.parse(until)))));
        Optional<Finding> late =
                find(ScheduleChecks.of(job.withSite(site), books.company(), books.laid()), "locate-runs-out");
        assertThat(late.isPresent()).isEqualTo(isFound);
        late.ifPresent(finding ->
                assertThat(finding.values()).containsEntry("until", until).containsEntry("last", "2026-09-11"));
        assertThat(find(found(DayBooks.schedule("2026-09-07", "2026-12-31", 20), "40"), "locate-runs-out"))
                .as("nobody wrote down how long the ticket holds")
                .isEmpty();
    }

    /** From Monday the 7th to Friday the 18th there are ten working days. */
    @ParameterizedTest(name = "{0} days between the 7th and the 18th: {1}")
    @CsvSource({"10, false", "11, true"})
    void moreDaysThanTheWindowHoldsAreFound(int stated, boolean isFound) {
        Optional<Finding> narrow =
                find(found(DayBooks.schedule("2026-09-07", "2026-09-18", stated), "8"), "schedule-too-narrow");
        assertThat(narrow.isPresent()).isEqualTo(isFound);
        narrow.ifPresent(finding -> assertThat(finding.values()).containsEntry("room", "10 days"));
    }

    /** Issued on Monday 10 August; lines are marked two working days later. */
    @ParameterizedTest(name = "start {0}: {1}")
    @CsvSource({"2026-08-11, true", "2026-08-12, false"})
    void startBeforeLinesAreMarkedIsFound(String start, boolean isFound) {
        assertThat(find(found(DayBooks.schedule(start, "2026-12-31", 20), "8"), "start-before-ready")
                        .isPresent())
                .isEqualTo(isFound);
    }

    @Test
    void unknownWaitTakesTheUsualDaysAndSaysSo() {
        Schedule schedule = new Schedule(
                DayBooks.schedule("2026-09-07", "2026-12-31", 20).earliestStart(),
                DayBooks.schedule("2026-09-07", "2026-12-31", 20).latestFinish(),
                20,
                "",
                Optional.empty(),
                BigDecimal.ZERO,
                new Waits(Map.of(WaitFor.COATING_CURE, OptionalInt.empty())));
        Finding unknown = find(found(schedule, "8"), "wait-unknown").orElseThrow();
        assertThat(unknown.about()).isEqualTo("coatingCure");
        assertThat(unknown.values()).containsEntry("days", "2 days");
        assertThat(find(found(DayBooks.schedule("2026-09-07", "2026-12-31", 20), "8"), "wait-unknown"))
                .isEmpty();
    }

    @Test
    void companyWithoutACalendarIsTold() {
        DayBooks job =
                new DayBooks(DayBooks.calendar(1, "0", 5), DayBooks.schedule("2026-09-07", "2026-12-31", 20)).dig("8");
        assertThat(find(ScheduleChecks.of(job.job(), DayBooks.with(Optional.empty()), job.laid()), "calendar-usual"))
                .isPresent();
        assertThat(find(ScheduleChecks.of(job.job(), job.company(), job.laid()), "calendar-usual"))
                .isEmpty();
    }
}
