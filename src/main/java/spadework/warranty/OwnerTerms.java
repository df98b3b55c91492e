// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.util.List;

/**
 * What owner and contractor owe each other under a warranty.
 *
 * @param replyDays working days within which a claim is answered
 * @param transfers how many times it may still pass to a later owner
 * @param transferNoticeDays days after a sale within which the new owner writes to the contractor
 * @param duties what the owner does to keep it in force
 */
public record OwnerTerms(int replyDays, int transfers, int transferNoticeDays, List<String> duties) {

    public OwnerTerms {
        duties = List.copyOf(duties);
    }

    OwnerTerms withTransfers(int left) {
        return new OwnerTerms(replyDays, left, transferNoticeDays, duties);
    }
}
