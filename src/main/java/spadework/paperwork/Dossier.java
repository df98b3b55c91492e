// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.util.Optional;
import spadework.company.Company;
import spadework.contract.Contract;
import spadework.contract.Revision;
import spadework.finding.Phrases;
import spadework.job.Job;
import spadework.law.HouseLaw;
import spadework.pricebook.PriceBook;
import spadework.schedule.DayQuantities;
import spadework.takeoff.Takeoff;

/**
 * All that the papers are made from: what the job said, what came of it, and the words. Of money it has prices alone;
 * what the work costs is handed to the cost sheet beside it.
 *
 * @param job the work that these papers are about
 * @param contract price of the job from the proposal to now
 * @param homeowner the words of the papers that the homeowner gets
 * @param revision which issue of the proposal this is; empty while it is a draft
 */
public record Dossier(
        Job job,
        Company company,
        PriceBook book,
        Takeoff takeoff,
        Contract contract,
        HouseLaw law,
        Optional<Revision> revision,
        DossierFindings findings,
        Phrases phrases,
        PaperWords terms,
        HomeownerWords homeowner,
        DossierPhotos photos) {

    /** The same in other short words. */
    public Dossier in(PaperWords others) {
        return terms.equals(others)
                ? this
                : new Dossier(
                        job, company, book, takeoff, contract, law, revision, findings, phrases, others, homeowner,
                        photos);
    }

    /** The same in the words of the homeowner's papers. */
    public Dossier forHomeowner() {
        return in(homeowner);
    }

    /** The same in other words, as the crew reads them; this one where they are in its language. */
    public Dossier in(HomeownerWords words) {
        return terms.language().equals(words.terms().language())
                ? this
                : new Dossier(
                        job,
                        company,
                        book,
                        takeoff,
                        contract,
                        law,
                        revision,
                        findings,
                        words.phrases(),
                        words.terms(),
                        homeowner,
                        photos);
    }

    /** The same about another state of the work: its price stays that of this one. */
    public Dossier about(Job other) {
        return new Dossier(
                other,
                company,
                book,
                DayQuantities.takeoff(other, company, book),
                contract,
                law,
                revision,
                findings,
                phrases,
                terms,
                homeowner,
                photos);
    }
}
