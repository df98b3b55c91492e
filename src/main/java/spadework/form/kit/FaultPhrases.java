// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Parts of faults in another language: the checks say them in English, with figures and names in them, and {@code
 * faults_es.properties} has each by that English, with {@code {0}}, {@code {1}} where those stand.
 */
final class FaultPhrases {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    private final List<Phrase> phrases;

    /** A phrase as the checks say it, and what stands for it. */
    private record Phrase(Pattern english, String said) {}

    FaultPhrases(ResourceBundle texts) {
        phrases = texts.keySet().stream()
                .sorted(Comparator.comparing((String english) ->
                                -PLACE.matcher(english).replaceAll("").length())
                        .thenComparing(english -> english))
                .map(english -> new Phrase(pattern(english), texts.getString(english)))
                .toList();
    }

    private static Pattern pattern(String english) {
        return Pattern.compile(
                Stream.of(PLACE.split(english, -1)).map(Pattern::quote).collect(Collectors.joining("(.+)")));
    }

    /** A phrase in that language, or a row of words that fields take; nothing where it has none. */
    Optional<String> of(String english) {
        return phrases.stream()
                .map(phrase -> said(phrase, english))
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> choices(english));
    }

    private static Optional<String> said(Phrase phrase, String english) {
        Matcher found = phrase.english.matcher(english);
        return found.matches()
                ? Optional.of(PLACE.matcher(phrase.said)
                        .replaceAll(
                                place -> Matcher.quoteReplacement(found.group(Integer.parseInt(place.group(1)) + 1))))
                : Optional.empty();
    }

    private static Optional<String> choices(String english) {
        List<String> called = new ArrayList<>();
        for (String word : english.split(", ")) {
            called.add(Messages.or("choice." + word, ""));
        }
        return called.contains("") ? Optional.empty() : Optional.of(String.join(", ", called));
    }
}
