// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How the work was sold: what the right to cancel hangs on.
 *
 * @param on the day on which the contract is signed: the date of the transaction
 * @param place where it is signed
 * @param salesperson who sold the work
 * @param oldestAge age of the oldest buyer, in years
 * @param language language of the sales talk
 * @param emergency whether the buyer called because of an emergency that cannot wait
 * @param statement file of the statement in the buyer's own hand that 16 CFR 429.0(a)(3) asks for, dated and signed
 * @param afterDisaster whether the work repairs damage by a disaster that was declared; empty where nobody said
 * @param received the day on which the buyer got the signed copy, where it was not the day of signing
 */
public record Sale(
        Optional<LocalDate> on,
        SigningPlace place,
        Optional<Salesperson> salesperson,
        Optional<Integer> oldestAge,
        String language,
        boolean emergency,
        Optional<String> statement,
        Optional<Boolean> afterDisaster,
        Optional<LocalDate> received) {

    /**
     * Whether the right to cancel was given up in the one way that the federal rule knows: an emergency for which the
     * buyer called, and a statement in the buyer's own hand.
     */
    public boolean isWaived() {
        return emergency && statement.isPresent();
    }
}
