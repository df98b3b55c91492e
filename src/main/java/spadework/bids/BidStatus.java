// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

/** Where a bid stands. */
public enum BidStatus {
    /** Not issued yet. */
    DRAFT,
    /** A proposal is out. */
    ISSUED,
    /** The contract is signed, or the job says that it was accepted. */
    ACCEPTED,
    /** The certificate is issued, or the job says that it is closed. */
    CLOSED,
    /** The homeowner declined, and nothing was issued since. */
    LOST
}
