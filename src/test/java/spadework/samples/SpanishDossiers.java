// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import spadework.finding.Phrases;
import spadework.paperwork.Dossier;
import spadework.paperwork.HomeownerWords;
import spadework.paperwork.PaperWords;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** The dossier of a sample as if its homeowner read Spanish. What somebody typed stays as it is. */
public final class SpanishDossiers {
    public static final Language SPANISH = Language.of("es");

    private static final HomeownerWords WORDS = new HomeownerWords(
            new PaperWords(Templates.bundled().words("words/terms.properties", SPANISH), SPANISH),
            new Phrases(Templates.bundled().words("words/findings.properties", SPANISH)));

    private SpanishDossiers() {}

    public static Dossier of(Dossier english) {
        return new Dossier(
                english.job(),
                english.company(),
                english.book(),
                english.takeoff(),
                english.contract(),
                english.law(),
                english.revision(),
                english.findings(),
                english.phrases(),
                english.terms(),
                WORDS,
                english.photos());
    }
}
