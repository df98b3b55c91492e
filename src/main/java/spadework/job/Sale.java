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
 */
public record Sale(
        Optional<LocalDate> on,
        SigningPlace place,
        Optional<Salesperson> salesperson,
        Optional<Integer> oldestAge,
        String language,
        boolean emergency) {}
