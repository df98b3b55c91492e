// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.draft.SchemaField;
import spadework.wording.Language;
import spadework.wording.Sentence;
import spadework.wording.Wording;

/** All that the window says, from its resource bundle, in the language of the company whose jobs it shows. */
public final class Messages {
    private static final Wording ENGLISH =
            new Wording(ResourceBundle.getBundle("spadework.form.words", Locale.ROOT), Language.ENGLISH);

    private static final String SEVERAL = "(s)";
    private static final Pattern COUNTED = Pattern.compile("(\\d[\\d,]*)((?: \\w+){1,2})\\(s\\)( are\\b)?");

    /** How a language that counts otherwise than by an s writes it, as ICU has it. */
    private static final String PLURAL = ", plural,";

    private static volatile Wording words = ENGLISH;
    /** What the schemas say, in a language that is not theirs. */
    private static volatile Optional<ResourceBundle> help = Optional.empty();

    /** What the checks say, in a language that is not theirs. */
    private static volatile Optional<FaultPhrases> faults = Optional.empty();

    private Messages() {}

    /** Has every window that is opened from now on speak a language. */
    public static void speak(Language language) {
        if (!words.language().equals(language)) {
            words = language.isEnglish() ? ENGLISH : ENGLISH.in(language);
            help = Wording.translated("spadework.form.help", language);
            faults = Wording.translated("spadework.form.faults", language).map(FaultPhrases::new);
        }
    }

    /** The language that the window speaks. */
    public static Language language() {
        return words.language();
    }

    private static ResourceBundle texts() {
        return words.texts();
    }

    /**
     * The words of a key, with {@code {0}}, {@code {1}} … replaced.
     *
     * @throws MissingResourceException if there are none
     */
    public static String of(String key, Object... values) {
        Wording spoken = words;
        String said = spoken.texts().getString(key);
        if (said.contains(PLURAL)) {
            return Sentence.of(said, spoken.language(), values);
        }
        for (int i = 0; i < values.length; i++) {
            said = said.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return said.contains(SEVERAL) ? counted(said) : said;
    }

    /** One of a thing, or several: "1 thing(s) are" becomes "1 thing is", "2 thing(s) are" becomes "2 things are". */
    static String counted(String words) {
        return COUNTED.matcher(words)
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group(1).equals("1")
                                ? found.group(1) + found.group(2) + (found.group(3) == null ? "" : " is")
                                : found.group(1) + found.group(2) + "s" + (found.group(3) == null ? "" : " are")));
    }

    /** The words of a key, or others where it has none. */
    public static String or(String key, String otherwise) {
        return texts().containsKey(key) ? texts().getString(key) : otherwise;
    }

    static Optional<FaultPhrases> faults() {
        return faults;
    }

    /** What belongs at a place of a file, in the window's language, or in the schema's where that lacks it. */
    public static String help(SchemaField place) {
        String key = place.help().key();
        return help.filter(texts -> texts.containsKey(key))
                .map(texts -> texts.getString(key))
                .orElse(place.help().english());
    }

    /** What a field at a place of the job is called. */
    public static String field(String pointer) {
        return of(keys("field", pointer).stream()
                .filter(texts()::containsKey)
                .findFirst()
                .orElse(keys("field", pointer).get(0)));
    }

    /** The same, where it has a name. */
    public static Optional<String> named(String pointer) {
        return keys("field", pointer).stream()
                .filter(texts()::containsKey)
                .findFirst()
                .map(texts()::getString);
    }

    /** What the head of its column is called, where the field's name is too long for one. */
    public static Optional<String> column(String pointer) {
        return keys("column", pointer).stream()
                .filter(texts()::containsKey)
                .findFirst()
                .map(texts()::getString);
    }

    /**
     * The keys under which the words of a place may stand. What an option or a change order adds or takes away is
     * called as it is in the job, unless it has words of its own.
     */
    private static List<String> keys(String kind, String pointer) {
        String place = pointer.replaceAll("/(\\d+|-)(?=/|$)", "").replace('/', '.');
        String altered = place.replaceFirst("^\\.(options|changes)\\.(?=adds|takesAway)", ".alteration.");
        String plain = altered.replaceFirst("^\\.alteration\\.(adds|takesAway)", "");
        return List.of(kind + place, kind + altered, kind + plain, kind + ".water" + plain);
    }
}
