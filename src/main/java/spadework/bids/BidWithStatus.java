// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

import spadework.company.Company;
import spadework.contract.Sum;
import spadework.job.Job;
import spadework.pricebook.PriceBook;
import spadework.pricing.Quote;

/**
 * A bid with where it stands.
 *
 * @param job the agreed work: as proposed until a contract is signed, then with options taken and accepted changes
 * @param company the contractor as the bid was priced with
 * @param book the book as this job uses it
 * @param quote of the agreed work
 * @param sum what the contract comes to
 */
public record BidWithStatus(BidStatus standing, Job job, Company company, PriceBook book, Quote quote, Sum sum) {}
