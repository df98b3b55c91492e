// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayCountTest {

    /** 5 USC 6103(a): the eleven holidays, on their own day and observed. */
    @ParameterizedTest(name = "{0} {1}: {2}, observed {3}")
    @CsvSource(textBlock = """
            NEW_YEARS_DAY,       2026, 2026-01-01, 2026-01-01
            KING_BIRTHDAY,       2026, 2026-01-19, 2026-01-19
            WASHINGTON_BIRTHDAY, 2026, 2026-02-16, 2026-02-16
            MEMORIAL_DAY,        2026, 2026-05-25, 2026-05-25
            JUNETEENTH,          2026, 2026-06-19, 2026-06-19
            INDEPENDENCE_DAY,    2026, 2026-07-04, 2026-07-03
            LABOR_DAY,           2026, 2026-09-07, 2026-09-07
            COLUMBUS_DAY,        2026, 2026-10-12, 2026-10-12
            VETERANS_DAY,        2026, 2026-11-11, 2026-11-11
            THANKSGIVING,        2026, 2026-11-26, 2026-11-26
            CHRISTMAS,           2026, 2026-12-25, 2026-12-25
            NEW_YEARS_DAY,       2027, 2027-01-01, 2027-01-01
            KING_BIRTHDAY,       2027, 2027-01-18, 2027-01-18
            WASHINGTON_BIRTHDAY, 2027, 2027-02-15, 2027-02-15
            MEMORIAL_DAY,        2027, 2027-05-31, 2027-05-31
            JUNETEENTH,          2027, 2027-06-19, 2027-06-18
            INDEPENDENCE_DAY,    2027, 2027-07-04, 2027-07-05
            LABOR_DAY,           2027, 2027-09-06, 2027-09-06
            COLUMBUS_DAY,        2027, 2027-10-11, 2027-10-11
            VETERANS_DAY,        2027, 2027-11-11, 2027-11-11
            THANKSGIVING,        2027, 2027-11-25, 2027-11-25
            CHRISTMAS,           2027, 2027-12-25, 2027-12-24
            NEW_YEARS_DAY,       2028, 2028-01-01, 2027-12-31
            """)
    void holidays(FederalHoliday holiday, int year, LocalDate day, LocalDate observed) {
        assertThat(holiday.in(year)).isEqualTo(day);
        assertThat(holiday.observedIn(year)).isEqualTo(observed);
    }

    /** 16 CFR 429.0(f): the third business day after signing; Saturday counts. */
    @ParameterizedTest(name = "signed {0}: {1} ({2})")
    @CsvSource(textBlock = """
            2026-03-02, 2026-03-05, plain week
            2026-03-05, 2026-03-09, Saturday counts and Sunday does not
            2026-03-06, 2026-03-10, over a Sunday
            2026-03-07, 2026-03-11, signed on a Saturday
            2026-03-08, 2026-03-11, signed on a Sunday
            2026-11-25, 2026-11-30, Thanksgiving does not count and the day after does
            2026-11-24, 2026-11-28, the last day may be a Saturday
            """)
    void thirdBusinessDay(LocalDate signed, LocalDate last, String why) {
        assertThat(DayCount.FEDERAL.lastDay(signed, 3)).as(why).isEqualTo(last);
    }

    /** The rules side by side: 16 CFR 429.0(f) read narrowly and safely, Monday to Friday, Md. Com. Law 14-302.1. */
    @ParameterizedTest(name = "signed {0}")
    @CsvSource(textBlock = """
            # signed,   text 3rd,   safe 3rd,   Mon-Fri 3rd, Mon-Fri 5th, Maryland 5th, Maryland 7th
            2026-01-16, 2026-01-21, 2026-01-21, 2026-01-22, 2026-01-26, 2026-01-22, 2026-01-24
            2026-05-22, 2026-05-27, 2026-05-27, 2026-05-28, 2026-06-01, 2026-05-29, 2026-06-01
            2026-06-17, 2026-06-22, 2026-06-22, 2026-06-23, 2026-06-25, 2026-06-23, 2026-06-25
            2026-07-01, 2026-07-06, 2026-07-07, 2026-07-07, 2026-07-09, 2026-07-08, 2026-07-10
            2026-07-02, 2026-07-07, 2026-07-08, 2026-07-08, 2026-07-10, 2026-07-09, 2026-07-11
            2026-09-03, 2026-09-08, 2026-09-08, 2026-09-09, 2026-09-11, 2026-09-10, 2026-09-12
            2026-11-10, 2026-11-14, 2026-11-14, 2026-11-16, 2026-11-18, 2026-11-17, 2026-11-19
            2026-11-25, 2026-11-30, 2026-11-30, 2026-12-01, 2026-12-03, 2026-12-02, 2026-12-04
            2026-12-23, 2026-12-28, 2026-12-28, 2026-12-29, 2026-12-31, 2026-12-30, 2027-01-02
            2026-12-31, 2027-01-05, 2027-01-05, 2027-01-06, 2027-01-08, 2027-01-07, 2027-01-09
            2027-06-16, 2027-06-21, 2027-06-22, 2027-06-22, 2027-06-24, 2027-06-22, 2027-06-24
            2027-07-02, 2027-07-06, 2027-07-07, 2027-07-08, 2027-07-12, 2027-07-08, 2027-07-10
            2027-12-23, 2027-12-28, 2027-12-29, 2027-12-29, 2028-01-03, 2027-12-30, 2028-01-03
            """)
    void rulesSideBySide(
            LocalDate signed,
            LocalDate text,
            LocalDate safe,
            LocalDate weekdays,
            LocalDate weekdaysFifth,
            LocalDate marylandFifth,
            LocalDate marylandSeventh) {
        assertThat(DayCount.FEDERAL.lastDay(signed, 3)).as("as it reads").isEqualTo(text);
        assertThat(DayCount.FEDERAL_AND_OBSERVED.lastDay(signed, 3)).as("safe").isEqualTo(safe);
        assertThat(DayCount.MONDAY_TO_FRIDAY.lastDay(signed, 3))
                .as("weekdays, 3rd")
                .isEqualTo(weekdays);
        assertThat(DayCount.MONDAY_TO_FRIDAY.lastDay(signed, 5))
                .as("weekdays, 5th")
                .isEqualTo(weekdaysFifth);
        assertThat(DayCount.MARYLAND.lastDay(signed, 5)).as("Maryland, 5th").isEqualTo(marylandFifth);
        assertThat(DayCount.MARYLAND.lastDay(signed, 7)).as("Maryland, 7th").isEqualTo(marylandSeventh);
    }

    /** The words that a proposal prints beside the last day say how it was counted. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            FEDERAL              | Sundays and federal holidays on their own day
            FEDERAL_AND_OBSERVED | Sundays, federal holidays and the days on which they are observed
            MONDAY_TO_FRIDAY     | Monday to Friday
            MARYLAND             | Maryland's nine holidays
            """)
    void eachWayOfCountingSaysWhichDaysCount(DayCount count, String words) {
        assertThat(count.words()).contains(words);
    }
}
