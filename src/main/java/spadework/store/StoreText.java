// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.util.Locale;
import java.util.ResourceBundle;

/** What a home of the office says, from its resource bundle. */
public final class StoreText {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("spadework.store.words", Locale.ROOT);

    private StoreText() {}

    /**
     * The words of a key, with {@code {0}}, {@code {1}} … replaced.
     *
     * @throws java.util.MissingResourceException if there are none
     */
    public static String of(String key, Object... values) {
        String words = BUNDLE.getString(key);
        for (int i = 0; i < values.length; i++) {
            words = words.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return words;
    }
}
