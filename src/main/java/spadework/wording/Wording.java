// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences of one package, from the {@code words.properties} that lies beside it.
 *
 * @param texts by key
 */
public record Wording(ResourceBundle texts) {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    /**
     * The sentences beside a class.
     *
     * @throws MissingResourceException if its package has none
     */
    public static Wording beside(Class<?> speaker) {
        return new Wording(ResourceBundle.getBundle(speaker.getPackageName() + ".words", Locale.ROOT));
    }

    /**
     * The same in a language, from {@code words_es.properties} beside it.
     *
     * @throws MissingResourceException if its package has none in that language
     */
    public Wording in(Language language) {
        return new Wording(ResourceBundle.getBundle(
                texts.getBaseBundleName(),
                language.words(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    }

    /**
     * The sentence of a key.
     *
     * @param values what stands in it for {@code {0}}, {@code {1}} and so on
     * @throws MissingResourceException if there is none
     */
    public String get(String key, Object... values) {
        return PLACE.matcher(texts.getString(key))
                .replaceAll(
                        place -> Matcher.quoteReplacement(String.valueOf(values[Integer.parseInt(place.group(1))])));
    }
}
