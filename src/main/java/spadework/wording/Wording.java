// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;

/**
 * The sentences of one package, from the {@code words.properties} that lies beside it.
 *
 * @param texts by key
 * @param language in which they are
 */
public record Wording(ResourceBundle texts, Language language) {
    private static final ResourceBundle.Control ONLY_THAT =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    /**
     * The sentences beside a class.
     *
     * @throws MissingResourceException if its package has none
     */
    public static Wording beside(Class<?> speaker) {
        return new Wording(
                ResourceBundle.getBundle(speaker.getPackageName() + ".words", Locale.ROOT), Language.ENGLISH);
    }

    /**
     * The same in a language, from {@code words_es.properties} beside it.
     *
     * @throws MissingResourceException if its package has none in that language
     */
    public Wording in(Language other) {
        ResourceBundle found = ResourceBundle.getBundle(texts.getBaseBundleName(), other.words(), ONLY_THAT);
        if (!found.getLocale().equals(other.words())) {
            throw missing(other, "");
        }
        return new Wording(found, other);
    }

    /**
     * A bundle that English has no file of, because it says the same in another place.
     *
     * @return nothing in a language that has none either
     */
    public static Optional<ResourceBundle> translated(String bundle, Language language) {
        try {
            return Optional.of(ResourceBundle.getBundle(bundle, language.words(), ONLY_THAT));
        } catch (MissingResourceException none) {
            return Optional.empty();
        }
    }

    /**
     * The sentence of a key.
     *
     * @param values what stands in it for {@code {0}}, {@code {1}} and so on
     * @throws MissingResourceException if there is none in this language: English is no stand-in for a sentence that
     *     its reader cannot read
     */
    public String get(String key, Object... values) {
        Object text = texts instanceof PropertyResourceBundle own ? own.handleGetObject(key) : texts.getObject(key);
        if (text == null) {
            throw missing(language, key);
        }
        return Sentence.of((String) text, language, values);
    }

    private MissingResourceException missing(Language asked, String key) {
        String bundle = texts.getBaseBundleName();
        return new MissingResourceException(bundle + " has no words in " + asked.code() + " " + key, bundle, key);
    }
}
