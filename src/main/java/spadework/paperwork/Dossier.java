package spadework.paperwork;

import java.util.List;
import java.util.Optional;
import spadework.company.Company;
import spadework.contract.Contract;
import spadework.contract.Revision;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.job.Job;
import spadework.law.StateRules;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Measuring;
import spadework.takeoff.Takeoff;

/**
 * All that the papers are made from: what the job said, what came of it, and the words. Of money it has prices alone;
 * what the work costs is handed to the cost sheet beside it.
 *
 * @param job the work that these papers are about
 * @param contract price of the job from the proposal to now
 * @param federal what federal law wants of the contract in every state
 * @param rules what is known of the state's contract law; empty where it was not gathered
 * @param revision which issue of the proposal this is; empty while it is a draft
 * @param pictures photos of the visit, in the job's order
 * @param workPictures photos of change orders and hold points
 * @param findings about site, trench, wall and water
 * @param contractFindings about the contract, for the contractor only
 * @param logo the firm's logo as a data address
 */
public record Dossier(
        Job job,
        Company company,
        PriceBook book,
        Takeoff takeoff,
        Contract contract,
        StateRules federal,
        Optional<StateRules> rules,
        Optional<Revision> revision,
        List<Finding> findings,
        List<Finding> contractFindings,
        Phrases phrases,
        PaperWords terms,
        Optional<String> logo,
        List<Picture> pictures,
        WorkPictures workPictures) {

    public Dossier {
        findings = List.copyOf(findings);
        contractFindings = List.copyOf(contractFindings);
        pictures = List.copyOf(pictures);
    }

    /** The same about another state of the work: its price stays that of this one. */
    public Dossier about(Job other) {
        return new Dossier(
                other,
                company,
                book,
                Measuring.of(other, book),
                contract,
                federal,
                rules,
                revision,
                findings,
                contractFindings,
                phrases,
                terms,
                logo,
                pictures,
                workPictures);
    }
}
