// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import spadework.job.FootingDrain;
import spadework.job.Job;

/** Where a footing drain can be flushed from, as counted for the price. */
public final class Cleanouts {
    private Cleanouts() {}

    /** How many stand between each high end and the tee, the one at the high end counted with them; at least one. */
    public static int fromEachEnd(Job job, FootingDrain drain) {
        return (int) DrainTakeoff.cleanoutsFromEachEnd(job, drain);
    }
}
