// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.WorkCalendar;

/** Days on which crews work. Dates of the holidays: 5 USC 6103(a) by their rules, looked up in a calendar by hand. */
class WorkDaysTest {
    private static WorkDays days(boolean worksHolidays, String... off) {
        WorkCalendar usual = WorkCalendar.USUAL;
        return new WorkDays(new WorkCalendar(
                usual.crews(),
                usual.hoursPerDay(),
                usual.workDays(),
                worksHolidays,
                List.of(off).stream().map(LocalDate::parse).toList(),
                usual.weather(),
                usual.standingDays(),
                usual.waits()));
    }

    /** 5 USC 6103(b)(1): a holiday on a Saturday is observed on Friday; on a Sunday on Monday (E.O. 11582). */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "2026-01-01, New Year's Day",
        "2026-01-19, third Monday of January",
        "2026-02-16, third Monday of February",
        "2026-05-25, last Monday of May",
        "2026-06-19, Juneteenth",
        "2026-07-03, 4 July 2026 is a Saturday",
        "2026-09-07, first Monday of September",
        "2026-10-12, second Monday of October",
        "2026-11-11, Veterans Day",
        "2026-11-26, fourth Thursday of November",
        "2026-12-25, Christmas",
        "2027-07-05, 4 July 2027 is a Sunday",
        "2027-12-31, 1 January 2028 is a Saturday"
    })
    void nobodyWorksOnAFederalHoliday(LocalDate day, String why) {
        assertThat(days(false).isWorked(day)).as(why).isFalse();
        assertThat(days(true).isWorked(day)).as(why).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"2026-07-02", "2026-07-06", "2026-09-08", "2026-11-27", "2026-12-24"})
    void theDayBesideAHolidayIsWorked(LocalDate day) {
        assertThat(days(false).isWorked(day)).isTrue();
    }

    @Test
    void aDayOffOfTheCompanyIsNotWorked() {
        assertThat(days(false, "2026-11-27").isWorked(LocalDate.parse("2026-11-27")))
                .isFalse();
        assertThat(days(true, "2026-11-27").from(LocalDate.parse("2026-11-27")))
                .isEqualTo(LocalDate.parse("2026-11-30"));
    }

    /** From Thanksgiving's Wednesday to the Monday after it: Wednesday, Friday, Monday. */
    @Test
    void daysBetweenLeaveOutWeekendAndHoliday() {
        LocalDate wednesday = LocalDate.parse("2026-11-25");
        LocalDate monday = LocalDate.parse("2026-11-30");
        assertThat(days(false).between(wednesday, monday)).isEqualTo(3);
        assertThat(days(true).between(wednesday, monday)).isEqualTo(4);
        assertThat(days(false, "2026-11-27").between(wednesday, monday)).isEqualTo(2);
    }

    /** A job that may begin on Labor Day begins on the day after it. */
    @Test
    void aJobThatMayBeginOnAHolidayBeginsAfterIt() {
        WorkCalendar usual = WorkCalendar.USUAL;
        CrewCalendar laid = new DayBooks(usual, DayBooks.schedule("2026-09-07", "2026-12-31", 60))
                .dig("8")
                .laid();
        assertThat(laid.start()).isEqualTo(LocalDate.parse("2026-09-08"));
    }
}
