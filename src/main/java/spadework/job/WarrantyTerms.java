// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * What is promised after the work.
 *
 * @param replyDays working days within which a claim is answered
 * @param visitDays working days after a claim within which somebody comes to look
 * @param findingDays working days after the look within which the owner has in writing what was found
 * @param beginDays days after that within which the repair begins
 * @param transfers how many times it may pass to a new owner
 * @param transferNoticeDays days after a sale within which the new owner writes to us
 * @param notCovered what it does not cover
 * @param duties what the owner does to keep it in force, each a thing the owner can do
 */
public record WarrantyTerms(
        List<WarrantyPart> parts,
        int replyDays,
        int visitDays,
        int findingDays,
        int beginDays,
        int transfers,
        int transferNoticeDays,
        List<String> notCovered,
        List<String> duties) {

    /** Where a company says nothing of {@code visitDays}: common practice, no source. */
    public static final int USUAL_VISIT_DAYS = 10;

    /** The same of {@code findingDays}. */
    public static final int USUAL_FINDING_DAYS = 5;

    /** The same of {@code beginDays}. */
    public static final int USUAL_BEGIN_DAYS = 30;

    public WarrantyTerms {
        parts = List.copyOf(parts);
        notCovered = List.copyOf(notCovered);
        duties = List.copyOf(duties);
    }
}
