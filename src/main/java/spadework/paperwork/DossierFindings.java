// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.util.List;
import spadework.finding.Finding;

/**
 * What the rules noticed about a job.
 *
 * @param site about site, trench, wall and water
 * @param contract about the contract, for the contractor only
 */
public record DossierFindings(List<Finding> site, List<Finding> contract) {

    public DossierFindings {
        site = List.copyOf(site);
        contract = List.copyOf(contract);
    }
}
