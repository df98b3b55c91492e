// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import spadework.wording.Wording;

/** What a home of the office says, from the words beside this package. */
public final class StoreText {
    private static final Wording WORDS = Wording.beside(StoreText.class);

    private StoreText() {}

    /**
     * The words of a key, with {@code {0}}, {@code {1}} … replaced.
     *
     * @throws java.util.MissingResourceException if there are none
     */
    public static String of(String key, Object... values) {
        return WORDS.get(key, values);
    }
}
