// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import spadework.job.Job;
import spadework.pricebook.PriceBook;
import spadework.water.Network;

/**
 * What the rules look at.
 *
 * @param network the job's pipes, laid out from the job and the book
 */
public record Facts(Job job, PriceBook book, Network network) {

    public Facts(Job job, PriceBook book) {
        this(job, book, Network.of(job, book));
    }
}
