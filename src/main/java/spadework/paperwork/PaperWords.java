// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.wording.Language;

/**
 * Short words for what a job names by key, from {@code templates/words/terms.properties}.
 *
 * @param language in which they are
 */
public record PaperWords(Map<String, String> texts, Language language) {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-z]+)}");

    public PaperWords {
        texts = Map.copyOf(texts);
    }

    /** English words. */
    public PaperWords(Map<String, String> texts) {
        this(texts, Language.ENGLISH);
    }

    /** A day as this language writes it. */
    public String day(LocalDate date) {
        return language.day(date);
    }

    /**
     * The words for a key.
     *
     * @param values name, text, name, text: what to put for each {@code {name}}
     * @throws IllegalStateException if the key or a value is missing
     */
    public String get(String key, String... values) {
        return find(key, values).orElseThrow(() -> new IllegalStateException("the words lack " + key));
    }

    /** The words for a constant, as {@code kind.poured}. */
    public String of(String group, Enum<?> constant, String... values) {
        return get(group + "." + key(constant.name()), values);
    }

    /** The words for a key, where there are some. */
    public Optional<String> find(String key, String... values) {
        return Optional.ofNullable(texts.get(key))
                .map(text -> PLACEHOLDER
                        .matcher(text)
                        .replaceAll(found -> Matcher.quoteReplacement(value(key, found.group(1), values))));
    }

    /** A name in the spelling of keys: lower case, hyphens. */
    public static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replace(",", "").replaceAll("[ _]", "-");
    }

    private static String value(String key, String name, String... values) {
        for (int i = 0; i < values.length; i += 2) {
            if (values[i].equals(name)) {
                return values[i + 1];
            }
        }
        throw new IllegalStateException(key + " asks for {" + name + "}");
    }
}
