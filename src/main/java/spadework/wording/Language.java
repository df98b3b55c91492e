// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A language in which papers are printed; measures and money stay as they are written in the United States. */
public enum Language {
    ENGLISH("en-US", Locale.ROOT, "MMMM d, uuuu", "EEE, MMM d", Locale.ENGLISH),
    SPANISH("es-US", Locale.forLanguageTag("es"), "d 'de' MMMM 'de' uuuu", "EEE d MMM", Locale.forLanguageTag("es"));

    private final String tag;
    private final Locale words;
    private final DateTimeFormatter dates;
    private final DateTimeFormatter weekdays;

    Language(String tag, Locale words, String dates, String weekdays, Locale months) {
        this.tag = tag;
        this.words = words;
        this.dates = DateTimeFormatter.ofPattern(dates, months);
        this.weekdays = DateTimeFormatter.ofPattern(weekdays, months);
    }

    /** As BCP 47 names it: {@code es-US}. */
    public String tag() {
        return tag;
    }

    /** What the file of its words is called after; English lies in the file without a mark. */
    Locale words() {
        return words;
    }

    /** A day, as {@code March 3, 2026} or {@code 3 de marzo de 2026}. */
    public String day(LocalDate date) {
        return date.format(dates);
    }

    /** A day of a plan whose year is plain, as {@code Tue, Mar 3} or {@code mar 3 mar}. */
    public String weekday(LocalDate date) {
        return date.format(weekdays);
    }
}
