// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Pattern;

/**
 * A language in which papers are printed; measures and money stay as they are written in the United States. Which there
 * are stands in {@code languages.properties}: another one is a row there and its files of words.
 *
 * @param code as jobs, companies and files of words have it: {@code es}
 * @param name its English name: {@code spanish}
 * @param tag as BCP 47 names it: {@code es-US}
 * @param days how a day is written
 * @param weekdays how a day of a plan is written
 * @param two how two things are joined; {@code {2}} is {@code i} where the second begins with that sound
 * @param more how the last of several things is joined to those before it
 */
public record Language(String code, String name, String tag, String days, String weekdays, String two, String more) {
    private static final List<Language> ALL = read();

    /** How a name begins before which some languages say "and" otherwise. */
    private static final Pattern SAME_SOUND = Pattern.compile("(?i)h?[ií](?![aeou]).*");

    /** What papers are in unless a job or a company says otherwise. */
    public static final Language ENGLISH = ALL.get(0);

    /** All of them, English first. */
    public static List<Language> all() {
        return ALL;
    }

    /**
     * The language of that code.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Language of(String code) {
        return ALL.stream()
                .filter(language -> language.code.equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(code));
    }

    /** The language of that tag; English for one that there are no words in. */
    public static Language ofTag(String tag) {
        return ALL.stream()
                .filter(language -> language.tag.equals(tag))
                .findFirst()
                .orElse(ENGLISH);
    }

    public boolean isEnglish() {
        return equals(ENGLISH);
    }

    /** A day, as {@code March 3, 2026} or {@code 3 de marzo de 2026}. */
    public String day(LocalDate date) {
        return written(days, date);
    }

    /** A day by another pattern of {@link DateTimeFormatter}, with the names of this language. */
    public String written(String pattern, LocalDate date) {
        return date.format(DateTimeFormatter.ofPattern(pattern, Locale.forLanguageTag(code)));
    }

    /** What the file of its words is called after; English lies in the file without a mark. */
    Locale words() {
        return isEnglish() ? Locale.ROOT : Locale.forLanguageTag(code);
    }

    /** A file of words in this language: {@code terms_es.properties} for {@code terms.properties}. */
    public String file(String english) {
        int end = english.lastIndexOf('.');
        return isEnglish() ? english : english.substring(0, end) + "_" + code + english.substring(end);
    }

    /** Things in a row: A; A and B; A, B, and C; empty for no things. */
    public String row(List<String> things) {
        int last = things.size() - 1;
        if (last < 1) {
            return String.join("", things);
        }
        String sound = SAME_SOUND.matcher(things.get(last)).matches() ? "i" : "other";
        String text = last == 1 ? two : more;
        return Sentence.of(text, this, String.join(", ", things.subList(0, last)), things.get(last), sound);
    }

    private static List<Language> read() {
        Properties rows = new Properties();
        try (Reader file = new InputStreamReader(
                Language.class.getResourceAsStream("languages.properties"), StandardCharsets.UTF_8)) {
            rows.load(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return rows.stringPropertyNames().stream()
                .filter(key -> key.endsWith(".name"))
                .map(key -> key.substring(0, key.indexOf('.')))
                .sorted(Comparator.comparing((String code) -> !code.equals("en"))
                        .thenComparing(code -> code))
                .map(code -> new Language(
                        code,
                        rows.getProperty(code + ".name"),
                        rows.getProperty(code + ".tag"),
                        rows.getProperty(code + ".days"),
                        rows.getProperty(code + ".weekdays"),
                        rows.getProperty(code + ".two"),
                        rows.getProperty(code + ".more")))
                .toList();
    }

    /** A day of a plan whose year is plain, as {@code Tue, Mar 3} or {@code mar 3 mar}. */
    public String weekday(LocalDate date) {
        return written(weekdays, date);
    }
}
