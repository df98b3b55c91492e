// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.languagetool.JLanguageTool;
import org.languagetool.rules.spelling.SpellingCheckRule;

/** Words that a judge of spelling knows already; to look for others in their place takes it most of its time. */
final class Spelled {
    private Spelled() {}

    /** Has the judge accept the words as they are, in capitals, and with a capital in front. */
    static void accept(JLanguageTool judge, Collection<String> words) {
        List<String> all = words.stream()
                .filter(word -> !word.isEmpty() && !word.contains(" "))
                .flatMap(word -> Stream.of(
                        word,
                        word.toUpperCase(Locale.ROOT),
                        word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1)))
                .toList();
        judge.getAllActiveRules().stream()
                .filter(SpellingCheckRule.class::isInstance)
                .map(SpellingCheckRule.class::cast)
                .forEach(rule -> rule.addIgnoreTokens(all));
    }
}
