// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.List;
import java.util.Map;
import java.util.Set;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.wording.Language;

/** Which papers print in the homeowner's language. */
public final class HomeownerPapers {
    /** The folders of their templates. */
    private static final Set<String> TRANSLATED = Set.of(
            "invoice",
            "receipt",
            "statement",
            "late-notice",
            "release",
            "letter",
            "certificate",
            "cancellation",
            "proposal",
            "scope",
            "contract",
            "change-order",
            "completion");

    /** Papers of a job that print in English whatever the homeowner reads. */
    private static final List<String> ENGLISH = List.of();

    private HomeownerPapers() {}

    /** Which papers the homeowner cannot read, where that is not English. */
    static List<Finding> inEnglish(Job job) {
        return job.head().language().isEnglish() || ENGLISH.isEmpty()
                ? List.of()
                : List.of(new Finding(
                        "papers-in-english",
                        Severity.ADVISE,
                        "",
                        Map.of("papers", String.join(", ", ENGLISH)),
                        "common practice, no source"));
    }

    /** In which language a paper of that template prints. */
    public static Language language(Dossier dossier, String template) {
        return words(dossier, template).terms().language();
    }

    /** What stands behind the name of a reading copy's file. */
    public static final String READING = "-reading-copy";

    /** Whether a paper of that template comes in English too, to be read beside the one in the homeowner's language. */
    static boolean isReadInEnglish(Dossier dossier, String template) {
        return dossier.company().letterhead().readingCopies()
                && !language(dossier, template).isEnglish();
    }

    /** The dossier in the words of that paper. */
    public static Dossier words(Dossier dossier, String template) {
        return TRANSLATED.contains(template) ? dossier.forHomeowner() : dossier;
    }
}
