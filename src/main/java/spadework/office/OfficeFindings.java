// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.paperwork.HomeownerWords;
import spadework.paperwork.part.FindingValues;
import spadework.wording.Language;
import spadework.wording.Wording;

/**
 * Findings as whoever sits in the office reads them: in the words of the papers, and for what no homeowner reads in
 * those of {@code findings_es.properties}, which lies beside this class. What neither has is said in English.
 */
final class OfficeFindings {
    private static final String OWN = "spadework.office.findings";

    private final OfficeWords words;
    private final Map<Language, Phrases> read = new ConcurrentHashMap<>();

    OfficeFindings(OfficeWords words) {
        this.words = words;
    }

    String what(Finding finding, Language language) {
        return in(language).what(said(finding, language));
    }

    String action(Finding finding, Language language) {
        return in(language).action(said(finding, language));
    }

    String deference(Language language) {
        return in(language).deference();
    }

    private Finding said(Finding finding, Language language) {
        HomeownerWords spoken = words.in(language);
        return language.isEnglish() ? finding : FindingValues.in(spoken.terms(), finding);
    }

    private Phrases in(Language language) {
        return read.computeIfAbsent(language, asked -> {
            Map<String, String> english = words.phrases(Language.ENGLISH).texts();
            Map<String, String> said = new HashMap<>(words.phrases(asked).texts());
            Wording.translated(OWN, asked)
                    .ifPresent(own -> own.keySet().stream()
                            .filter(key -> said.getOrDefault(key, "").equals(english.get(key)))
                            .forEach(key -> said.put(key, own.getString(key))));
            return new Phrases(said);
        });
    }
}
