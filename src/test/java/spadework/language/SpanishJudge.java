// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.languagetool.JLanguageTool;
import org.languagetool.Languages;
import org.languagetool.rules.RuleMatch;

/** LanguageTool in Spanish, with the words and rules that are explained. */
final class SpanishJudge {
    private static final Path EXPLAINED = Path.of("src/test/resources/spadework/language");

    private final JLanguageTool judge = new JLanguageTool(Languages.getLanguageForShortCode("es"));
    private final List<String> known;
    private final Set<String> read = new HashSet<>();

    SpanishJudge() throws IOException {
        this(Set.of());
    }

    /** @param names words in small letters that somebody typed, in any language */
    SpanishJudge(Set<String> names) throws IOException {
        judge.disableRules(lines("rules-set-aside-es.txt"));
        known = lines("trade-words-es.txt");
        Spelled.accept(judge, known);
        Spelled.accept(judge, names);
    }

    /** What is wrong with a text; the same sentence with other figures is read once. */
    List<String> faults(String text) throws IOException {
        List<String> faults = new ArrayList<>();
        if (!read.add(text.replaceAll("[\\d.,½¼¾]+", "1"))) {
            return faults;
        }
        for (RuleMatch match : judge.check(text)) {
            String said = text.substring(match.getFromPos(), match.getToPos());
            if (!known.contains(said)) {
                faults.add(said + " (" + match.getRule().getId() + ") in: " + text);
            }
        }
        return faults;
    }

    private static List<String> lines(String file) throws IOException {
        return Files.readAllLines(EXPLAINED.resolve(file)).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.replaceAll("\\s*#.*", ""))
                .filter(line -> !line.isBlank())
                .toList();
    }
}
