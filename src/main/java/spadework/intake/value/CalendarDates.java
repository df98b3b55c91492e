// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import spadework.intake.source.ValueKind;
import spadework.measure.UnreadableMeasure;

/** Days of the calendar, ISO 8601. */
public final class CalendarDates {
    private static final String WHAT = "a date as year-month-day";

    public static final ValueKind<LocalDate> DATE = TextWithUnit.kind(
            WHAT,
            "2026-03-03",
            CalendarDates::parse,
            new Limits<>("from 1900 to 2199", day -> day.getYear() >= 1900 && day.getYear() <= 2199),
            LocalDate.of(1900, 1, 1));

    private CalendarDates() {}

    private static LocalDate parse(String text) throws UnreadableMeasure {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException noDay) {
            throw new UnreadableMeasure(WHAT, "write a day of the calendar as \"2026-03-03\"");
        }
    }
}
