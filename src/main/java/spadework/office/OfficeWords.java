// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import spadework.company.Company;
import spadework.finding.Phrases;
import spadework.paperwork.HomeownerWords;
import spadework.paperwork.PaperWords;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** Short words and words for findings, in each language that a job asks for; each is read once. */
final class OfficeWords {
    /** What the bundled price book says, in other languages. */
    private static final String BOOK = "words/book.properties";

    private final Templates templates;
    private final Map<Language, HomeownerWords> read = new ConcurrentHashMap<>();

    OfficeWords(Templates templates) {
        this.templates = templates;
    }

    HomeownerWords in(Language language) {
        return read.computeIfAbsent(
                language,
                asked -> new HomeownerWords(
                        new PaperWords(templates.words("words/terms.properties", asked), asked, Map.of()),
                        new Phrases(templates.words("words/findings.properties", asked))));
    }

    /** The same with what the firm itself says in that language. */
    HomeownerWords in(Language language, Company company) {
        HomeownerWords words = in(language);
        Map<String, String> own = new HashMap<>(language.isEnglish() ? Map.of() : templates.words(language.file(BOOK)));
        own.putAll(company.letterhead().translated(language));
        return new HomeownerWords(words.terms().with(own), words.phrases());
    }

    Phrases phrases(Language language) {
        return in(language).phrases();
    }
}
