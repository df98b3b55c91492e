// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import spadework.finding.Phrases;
import spadework.office.Bid;
import spadework.paperwork.Dossier;
import spadework.paperwork.HomeownerWords;
import spadework.paperwork.PaperWords;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** The dossier of a sample as if its homeowner read Spanish. What somebody typed stays as it is. */
public final class SpanishDossiers {
    public static final Language SPANISH = Language.of("es");

    private static final HomeownerWords WORDS = new HomeownerWords(
            new PaperWords(Templates.bundled().words("words/terms.properties", SPANISH), SPANISH, Map.of()),
            new Phrases(Templates.bundled().words("words/findings.properties", SPANISH)));

    /** What the contractor of the samples says in Spanish; a signed sample keeps the company of its day. */
    private static final Map<String, String> FIRM =
            new TreeMap<>(Templates.bundled().words("words/book_es.properties"));

    static {
        FIRM.putAll(Samples.bid(Path.of("sample-quotes/block-basement-to-swale"))
                .dossier()
                .company()
                .letterhead()
                .translated(SPANISH));
    }

    private SpanishDossiers() {}

    /** The bid of a sample as if its homeowner read Spanish. */
    public static Bid of(Bid english) {
        return new Bid(
                of(english.proposed()),
                of(english.contracted()),
                of(english.dossier()),
                english.proposedQuote(),
                english.quote());
    }

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
                new HomeownerWords(WORDS.terms().with(FIRM), WORDS.phrases()),
                english.photos());
    }
}
