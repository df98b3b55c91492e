// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;

/**
 * What a contract says beyond the work, so that it is lawful where the house stands. What is unknown is left out, and
 * the check of contents says that it is missing.
 *
 * @param subcontractors who works under us; an empty list says that nobody does, a missing one that it is unknown
 * @param dateIsEssential whether the finish date is of the essence
 * @param permits who pulls which permits
 * @param materials principal materials with make, model, size and grade, one a line
 * @param signers who signs for an owner, by what right
 */
public record Signing(
        Sale sale,
        Financing financing,
        Optional<List<Subcontractor>> subcontractors,
        Optional<Boolean> dateIsEssential,
        Optional<String> permits,
        List<String> materials,
        List<Signer> signers) {

    public Signing {
        subcontractors = subcontractors.map(List::copyOf);
        materials = List.copyOf(materials);
        signers = List.copyOf(signers);
    }
}
