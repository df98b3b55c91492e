// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import spadework.job.Observation;
import spadework.paperwork.Picture;

/**
 * What was found at the visit.
 *
 * @param notFixed what the work will not fix
 * @param pictures photos of the visit
 */
public record ProposalFound(List<Observation> observations, List<String> notFixed, List<Picture> pictures) {

    public ProposalFound {
        observations = List.copyOf(observations);
        notFixed = List.copyOf(notFixed);
        pictures = List.copyOf(pictures);
    }
}
