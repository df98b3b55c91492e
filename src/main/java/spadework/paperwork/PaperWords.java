// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.time.LocalDate;
import java.util.List;
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
 * @param own what the firm itself says, in this language, by the text as it stands in its files
 */
public record PaperWords(Map<String, String> texts, Language language, Map<String, String> own) {
    private static final Pattern MILS = Pattern.compile("(?<=\\d) mil\\b");

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-z]+)}");

    public PaperWords {
        texts = Map.copyOf(texts);
        own = Map.copyOf(own);
    }

    /** English words. */
    public PaperWords(Map<String, String> texts) {
        this(texts, Language.ENGLISH, Map.of());
    }

    /** The same with what a firm itself says. */
    public PaperWords with(Map<String, String> firm) {
        return new PaperWords(texts, language, firm);
    }

    /** Things in a row: A; A and B; A, B, and C. */
    public String row(List<String> things) {
        return language.row(things);
    }

    /** Walls by their labels: wall A; walls A and B. */
    public String walls(List<String> labels) {
        return get(labels.size() == 1 ? "walls.one" : "walls.several", "walls", row(labels));
    }

    /** From one figure to another. */
    public String range(String from, String to) {
        return get("range", "from", from, "to", to);
    }

    /** How a unit is written by itself: feet and cubic yards stay, a load or a piece is a word. */
    public String symbol(String unit) {
        return find("symbol." + unit).orElse(unit);
    }

    /** A figure with its unit, as it is written in English, with the unit as it is written here. */
    public String measured(String figure, String unit) {
        String english = " " + unit;
        if (!figure.endsWith(english)) {
            return figure;
        }
        String number = figure.substring(0, figure.length() - english.length());
        boolean one = number.matches("1(\\.0+)?");
        return number + " " + find("symbol." + unit + (one ? ".one" : "")).orElse(symbol(unit));
    }

    /**
     * A film such as {@code 60 mil} or {@code 59.1 mil (1.5 mm)} as this language writes it: in Spanish "60 mil" reads
     * as sixty thousand.
     */
    public String film(String text) {
        return MILS.matcher(text).replaceAll(" " + symbol("mil"));
    }

    /** A text of the firm's own in this language; as it stands where the firm has it in no other. */
    public String own(String text) {
        return own.getOrDefault(text, text);
    }

    public List<String> own(List<String> texts) {
        return texts.stream().map(this::own).toList();
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
