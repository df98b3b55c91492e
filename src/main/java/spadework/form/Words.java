package spadework.form;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** All that the window says, from its resource bundle. */
final class Words {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("spadework.form.words", Locale.ROOT);

    private Words() {}

    /**
     * The words of a key, with {@code {0}}, {@code {1}} … replaced.
     *
     * @throws MissingResourceException if there are none
     */
    static String of(String key, Object... values) {
        String words = BUNDLE.getString(key);
        for (int i = 0; i < values.length; i++) {
            words = words.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return words;
    }

    /** The words of a key, or others where it has none. */
    static String or(String key, String otherwise) {
        return BUNDLE.containsKey(key) ? BUNDLE.getString(key) : otherwise;
    }

    /** What a field at a place of the job is called. */
    static String field(String pointer) {
        return of("field" + pointer.replaceAll("/(\\d+|-)(?=/|$)", "").replace('/', '.'));
    }
}
