// SPDX-License-Identifier: Apache-2.0
package spadework.intake.company;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.wording.Language;

/** Reads the firm's own texts in other languages. */
final class TranslationReader {
    private static final ValueKind<Map<String, String>> TEXTS = new ValueKind<>("{}", TranslationReader::texts);

    static final ValueKind<Map<String, Map<String, String>>> TRANSLATIONS = ValueKind.object(fields -> {
        Map<String, Map<String, String>> all = new LinkedHashMap<>();
        for (Language language : others()) {
            Optional<Map<String, String>> texts = fields.find(language.code(), TEXTS);
            texts.ifPresent(found -> all.put(language.code(), found));
        }
        return all;
    });

    private TranslationReader() {}

    private static List<Language> others() {
        return Language.all().stream().filter(language -> !language.isEnglish()).toList();
    }

    private static Map<String, String> texts(SourceNode node) {
        if (!node.isSilent() && !node.isObject()) {
            node.fault(node.written(), "texts by the text as it stands", "write it as {\"…\": \"…\"}");
        }
        Map<String, String> texts = new LinkedHashMap<>();
        node.keys().forEach(text -> texts.put(text, Texts.TEXT.read(node.at(text))));
        return texts;
    }
}
