// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.Optional;
import spadework.money.Dollars;

/**
 * The least liability cover that a state asks of a contractor.
 *
 * @param least for one occurrence
 * @param from the contract price from which it is asked for; empty where it is asked for at any price
 * @param status how far it was read: {@code R} read, {@code RX} excerpt, {@code RS} secondary source, {@code M} memory
 * @param citation where it stands
 */
public record LeastCover(CoverKind cover, Dollars least, Optional<Dollars> from, String status, String citation) {
    /** Whether a contract of that price has to have it. */
    public boolean reaches(Dollars price) {
        return from.map(least -> !price.isLessThan(least)).orElse(true);
    }

    /** As in "$50,000.00 for injury". */
    public String text() {
        return least.text() + " for " + cover.words();
    }
}
