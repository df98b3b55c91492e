// SPDX-License-Identifier: Apache-2.0
package spadework.office;

/** What came of a job file: a bid, or the reasons why there is none. */
public sealed interface BidResult permits Bid, Refusal {}
