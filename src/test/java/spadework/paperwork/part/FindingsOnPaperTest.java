// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.press.template.Templates;
import spadework.samples.Samples;

/** On paper an owner reads what to do in plain words: no command, no file, no key of one. */
class FindingsOnPaperTest {
    private static final Map<String, String> WORDS = Templates.bundled().words("words/findings.properties");
    private static final Pattern TECHNICAL = Pattern.compile("\"[a-zA-Z]+\"|\\.json|\\.ftlh|--[a-z]+|\\bcommand \\w+");

    @Test
    void actionThatNamesAKeyHasPlainWordsForPaper() {
        List<String> actions = WORDS.keySet().stream()
                .filter(key -> key.endsWith(".action"))
                .sorted()
                .toList();
        assertThat(actions).hasSizeGreaterThan(200);
        for (String key : actions) {
            String paper = WORDS.getOrDefault(key + ".sheet", WORDS.get(key));
            assertThat(TECHNICAL.matcher(paper).find()).as(key).isFalse();
        }
    }

    @Test
    void plainWordsStandOnlyWhereTheyDiffer() {
        List<String> plain =
                WORDS.keySet().stream().filter(key -> key.endsWith(".sheet")).toList();
        assertThat(plain).hasSizeGreaterThan(50);
        for (String key : plain) {
            String usual = WORDS.get(key.substring(0, key.length() - ".sheet".length()));
            assertThat(usual).as(key).isNotNull().isNotEqualTo(WORDS.get(key));
        }
    }

    @Test
    void checkKeepsTheKeys() {
        Phrases phrases = new Phrases(WORDS);
        Finding end = new Finding("license-end-unsaid", Severity.MUST, "", Map.of(), "");
        assertThat(phrases.action(end)).contains("company.json");
        assertThat(phrases.actionOnPaper(end)).isEqualTo("Look it up and enter it in the company's details.");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void costSheetNamesNoFile(Path sample) throws IOException {
        String sheet = Files.readString(sample.resolve("expected/cost-sheet.txt"));
        assertThat(sheet).contains("For the contractor only").doesNotContain(".json", "--with");
        assertThat(Samples.papered()).contains(sample);
    }
}
