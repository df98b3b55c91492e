// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;

/**
 * What owner and contractor owe each other under a warranty.
 *
 * @param replyDays working days within which a claim is answered
 * @param visitDays working days after a claim within which somebody comes to look
 * @param findingDays working days after the look within which the owner has in writing what was found
 * @param beginDays days after that within which the repair begins
 * @param transfers how many times it may still pass to a later owner
 * @param transferNoticeDays days after a sale within which the new owner writes to the contractor
 * @param duties what the owner does to keep it in force
 */
@RecordBuilder
public record OwnerTerms(
        int replyDays,
        int visitDays,
        int findingDays,
        int beginDays,
        int transfers,
        int transferNoticeDays,
        List<String> duties)
        implements OwnerTermsBuilder.With {

    /** What every certificate said before its line in the register named its own {@code visitDays}. */
    public static final int VISIT_DAYS_BEFORE = 10;

    /** The same of {@code findingDays}. */
    public static final int FINDING_DAYS_BEFORE = 5;

    /** The same of {@code beginDays}. */
    public static final int BEGIN_DAYS_BEFORE = 30;

    public OwnerTerms {
        duties = List.copyOf(duties);
    }
}
