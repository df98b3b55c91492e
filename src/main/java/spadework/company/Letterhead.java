// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.wording.Language;

/**
 * How the company's papers and screens look.
 *
 * @param logo file name of a PNG or JPEG beside the company file
 * @param payTo how to pay, one line each, as bills print it: who a check is for, which account takes a transfer
 * @param crewLanguage what the crew reads, whatever the homeowner does
 * @param officeLanguage what the office reads: the window and the help of commands; no paper follows it
 * @param readingCopies whether a homeowner's papers in another language come in English too, to be read beside them
 * @param translations the firm's own texts in other languages: by the language's code, then by the text as it stands
 */
public record Letterhead(
        Optional<String> logo,
        Paper paper,
        List<String> payTo,
        Language crewLanguage,
        Language officeLanguage,
        boolean readingCopies,
        Map<String, Map<String, String>> translations) {

    public Letterhead {
        payTo = List.copyOf(payTo);
        translations = Map.copyOf(translations);
    }

    /** The firm's own texts in that language, by the text as it stands. */
    public Map<String, String> translated(Language language) {
        return translations.getOrDefault(language.code(), Map.of());
    }
}
