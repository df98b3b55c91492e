// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as the papers print them: March 3, 2026. */
public final class PrintedDates {
    private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.ENGLISH);

    private PrintedDates() {}

    public static String words(LocalDate date) {
        return date.format(WORDS);
    }
}
