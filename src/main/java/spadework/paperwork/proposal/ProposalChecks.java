// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.company.Company;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.WarrantyTerms;

/** What a homeowner has to read in a proposal and the job does not say: a heading is never printed over nothing. */
public final class ProposalChecks {
    private static final String PRACTICE = "common practice, no source";

    private ProposalChecks() {}

    /** A finding for each part that is empty; about the contractor's files, for the contractor alone. */
    public static List<Finding> of(Job job, Company company) {
        List<Finding> found = new ArrayList<>();
        WarrantyTerms warranty = job.warranty();
        need(found, "proposal-nothing-wrong", job.observations().isEmpty());
        need(
                found,
                "proposal-nothing-excluded",
                job.excluded().isEmpty() && company.excluded().isEmpty());
        need(found, "proposal-nothing-uncovered", warranty.notCovered().isEmpty());
        need(found, "proposal-nobody-to-call", company.contactPerson().isEmpty());
        need(found, "proposal-no-duties", warranty.duties().isEmpty());
        return found;
    }

    private static void need(List<Finding> found, String id, boolean empty) {
        if (empty) {
            found.add(new Finding(id, Severity.MUST, "", Map.of(), PRACTICE));
        }
    }
}
