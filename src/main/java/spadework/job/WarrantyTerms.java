// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * What is promised after the work.
 *
 * @param replyDays working days within which a claim is answered
 * @param transfers how many times it may pass to a new owner
 * @param transferNoticeDays days after a sale within which the new owner writes to us
 * @param notCovered what it does not cover
 * @param duties what the owner does to keep it in force, each a thing the owner can do
 */
public record WarrantyTerms(
        List<WarrantyPart> parts,
        int replyDays,
        int transfers,
        int transferNoticeDays,
        List<String> notCovered,
        List<String> duties) {

    public WarrantyTerms {
        parts = List.copyOf(parts);
        notCovered = List.copyOf(notCovered);
        duties = List.copyOf(duties);
    }
}
