// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.util.List;
import java.util.function.Supplier;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Job;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Measuring;
import spadework.takeoff.Takeoff;
import spadework.water.Network;

/**
 * What the rules look at.
 *
 * @param network the job's pipes, laid out from the job and the book
 * @param bodies all that is dug
 * @param takeoff all that is measured; asked for by the few rules that need it
 */
public record Facts(Job job, PriceBook book, Network network, List<DigBody> bodies, Supplier<Takeoff> takeoff) {

    public Facts {
        bodies = List.copyOf(bodies);
    }

    public Facts(Job job, PriceBook book) {
        this(job, book, Network.of(job, book), DigBodies.of(job), () -> Measuring.of(job, book));
    }

    /** Of a job that was measured. */
    public Facts(Job job, PriceBook book, Takeoff measured) {
        this(job, book, Network.of(job, book), DigBodies.of(job), () -> measured);
    }
}
