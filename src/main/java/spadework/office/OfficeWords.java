// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import spadework.finding.Phrases;
import spadework.paperwork.HomeownerWords;
import spadework.paperwork.PaperWords;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** Short words and words for findings, in each language that a job asks for; each is read once. */
final class OfficeWords {
    private final Templates templates;
    private final Map<Language, HomeownerWords> read = new ConcurrentHashMap<>();

    OfficeWords(Templates templates) {
        this.templates = templates;
    }

    HomeownerWords in(Language language) {
        return read.computeIfAbsent(
                language,
                asked -> new HomeownerWords(
                        new PaperWords(templates.words("words/terms.properties", asked), asked),
                        new Phrases(templates.words("words/findings.properties", asked))));
    }

    Phrases phrases(Language language) {
        return in(language).phrases();
    }
}
