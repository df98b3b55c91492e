// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** All that the window says, from its resource bundle. */
public final class Messages {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("spadework.form.words", Locale.ROOT);

    private static final String SEVERAL = "(s)";
    private static final Pattern COUNTED = Pattern.compile("(\\d[\\d,]*)((?: \\w+){1,2})\\(s\\)( are\\b)?");

    private Messages() {}

    /**
     * The words of a key, with {@code {0}}, {@code {1}} … replaced.
     *
     * @throws MissingResourceException if there are none
     */
    public static String of(String key, Object... values) {
        String words = BUNDLE.getString(key);
        for (int i = 0; i < values.length; i++) {
            words = words.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return words.contains(SEVERAL) ? counted(words) : words;
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
        return BUNDLE.containsKey(key) ? BUNDLE.getString(key) : otherwise;
    }

    /** What a field at a place of the job is called. */
    public static String field(String pointer) {
        return of(keys("field", pointer).stream()
                .filter(BUNDLE::containsKey)
                .findFirst()
                .orElse(keys("field", pointer).get(0)));
    }

    /** The same, where it has a name. */
    public static Optional<String> named(String pointer) {
        return keys("field", pointer).stream()
                .filter(BUNDLE::containsKey)
                .findFirst()
                .map(BUNDLE::getString);
    }

    /** What the head of its column is called, where the field's name is too long for one. */
    public static Optional<String> column(String pointer) {
        return keys("column", pointer).stream()
                .filter(BUNDLE::containsKey)
                .findFirst()
                .map(BUNDLE::getString);
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
