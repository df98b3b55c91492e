// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** On which days a state's own holidays fall. */
class StateHolidayTest {
    private static final StateHoliday NEW_YEAR = new StateHoliday("new year", new StateHoliday.OnDate(1, 1), "R");

    /**
     * Easter Sundays of the Gregorian calendar as almanacs print them (from memory): the earliest and the latest date
     * there is, the years in which the moon's table is set back by a day (1954, 1981, 2049, 2076), and the turns of
     * centuries, leap and not.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1818-03-22", "1886-04-25", "1900-04-15", "1943-04-25", "1954-04-18", "1961-04-02", "1981-04-19",
                "1999-04-04", "2000-04-23", "2008-03-23", "2011-04-24", "2026-04-05", "2038-04-25", "2049-04-18",
                "2076-04-19", "2095-04-24", "2099-04-12", "2100-03-28", "2199-04-14", "2200-04-06", "2285-03-22",
                "2299-04-16"
            })
    void easterFallsWhereAlmanacsHaveIt(LocalDate easter) {
        assertThat(new StateHoliday.FromEaster(0).in(easter.getYear())).contains(easter);
        assertThat(new StateHoliday.FromEaster(-2).in(easter.getYear())).contains(easter.minusDays(2));
    }

    /** New Year's Day of 2028 is a Saturday: its Friday lies in the year before. Of 2026 it is a Thursday. */
    @ParameterizedTest(name = "{0}: a holiday is {1}")
    @CsvSource({
        "2027-12-30, false",
        "2027-12-31, true",
        "2028-01-01, true",
        "2028-01-03, false",
        "2025-12-31, false",
        "2026-01-01, true",
        "2026-01-02, false"
    })
    void holidayOfNextYearIsObservedAtTheEndOfThisOne(LocalDate day, boolean holiday) {
        assertThat(NEW_YEAR.isOn(day)).isEqualTo(holiday);
    }

    /** A term that ends over it ends a day later. */
    @Test
    void stateHolidayIsNotCountedInATerm() {
        LocalDate signed = LocalDate.of(2027, 12, 29);
        StateHoliday thirtieth = new StateHoliday("thirtieth", new StateHoliday.OnDate(12, 30), "R");
        assertThat(DayCount.FEDERAL.lastDay(signed, 1)).isEqualTo(LocalDate.of(2027, 12, 30));
        assertThat(DayCount.FEDERAL.lastDay(signed, 1, List.of(thirtieth))).isEqualTo(LocalDate.of(2027, 12, 31));
    }
}
