// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.letter;

import java.util.List;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.PaperHeads;

/**
 * What the e-mail says that carries papers to the homeowner.
 *
 * @param names everybody who signs, as a letter greets them
 * @param papers names of the papers that go with it
 * @param validUntil last day of the price
 * @param callName whom to ask for; empty where the company names nobody
 * @param callPhone where that person, or the office, is reached
 */
public record CoverNote(
        String names,
        String number,
        String jobTitle,
        String street,
        List<String> papers,
        String validUntil,
        String company,
        String callName,
        String callPhone) {

    public CoverNote {
        papers = List.copyOf(papers);
    }

    /** The note of a job; {@code papers} names the files in the homeowner's words. */
    public static CoverNote of(Dossier dossier, List<String> papers) {
        Job job = dossier.job();
        PaperHead head = PaperHeads.of(dossier);
        return new CoverNote(
                greeted(dossier.terms(), job.customer().names()),
                job.number(),
                job.title(),
                job.site().address().street(),
                papers,
                head.validUntil(),
                dossier.company().name(),
                head.firm().callName(),
                head.firm().callPhone());
    }

    /** Two names and more are greeted without a comma. */
    private static String greeted(PaperWords terms, List<String> names) {
        return names.stream()
                .reduce((one, next) -> terms.row(List.of(one, next)))
                .orElse("");
    }
}
