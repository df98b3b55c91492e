// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Percent;

/**
 * A payment.
 *
 * @param when the event that makes it due, one that can be seen
 * @param share of the price
 * @param atSigning true for a deposit, which state law may cap
 * @param workDone how much of the work, by its value, is done when it falls due
 */
public record Payment(String when, Percent share, boolean atSigning, Optional<Percent> workDone) {

    /** One that does not say how much of the work is done by then. */
    public Payment(String when, Percent share, boolean atSigning) {
        this(when, share, atSigning, Optional.empty());
    }
}
