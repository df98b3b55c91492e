// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.util.List;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Job;
import spadework.pricebook.PriceBook;
import spadework.water.Network;

/**
 * What the rules look at.
 *
 * @param network the job's pipes, laid out from the job and the book
 * @param bodies all that is dug
 */
public record Facts(Job job, PriceBook book, Network network, List<DigBody> bodies) {

    public Facts {
        bodies = List.copyOf(bodies);
    }

    public Facts(Job job, PriceBook book) {
        this(job, book, Network.of(job, book), DigBodies.of(job));
    }
}
