package spadework.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * What a contract says beyond the work, so that it is lawful where the house stands. What is unknown is left out, and
 * the check of contents says that it is wanting.
 *
 * @param on the day on which it is signed: the date of the transaction
 * @param place where it is signed
 * @param salesperson who sold the work
 * @param oldestAge age of the oldest buyer, in years
 * @param specialOrder cost of special-order material that must be ordered before the work starts
 * @param emergency whether the buyer called because of an emergency that cannot wait
 * @param subcontractors who works under us; an empty list says that nobody does, a missing one that it is unknown
 * @param language language of the sales talk
 * @param dateIsEssential whether the finish date is of the essence
 * @param depositHeld where payments are held in trust, or who bonds them
 * @param permits who pulls which permits
 * @param lienOnHome whether the contract gives a claim on the home as security
 * @param financed whether anybody lends the buyer the price
 */
public record Signing(
        Optional<LocalDate> on,
        SigningPlace place,
        Optional<Salesperson> salesperson,
        Optional<Integer> oldestAge,
        Optional<Dollars> specialOrder,
        boolean emergency,
        Optional<List<Subcontractor>> subcontractors,
        String language,
        Optional<Boolean> dateIsEssential,
        Optional<String> depositHeld,
        Optional<String> permits,
        boolean lienOnHome,
        boolean financed) {

    public Signing {
        subcontractors = subcontractors.map(List::copyOf);
    }
}
