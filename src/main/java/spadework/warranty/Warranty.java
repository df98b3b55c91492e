package spadework.warranty;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A warranty as its certificate gives it: all that is needed to find it again without the job or the price book.
 *
 * @param number of the certificate
 * @param reissueOf number of the first certificate, when this one was reissued to a later owner
 * @param job the job's number
 * @param owners whom it covers now
 * @param address of the house
 * @param replyDays working days within which a claim is answered
 * @param transfers how many times it may still pass to a later owner
 * @param transferNoticeDays days after a sale within which the new owner writes to the contractor
 * @param notCovered what it does not cover
 * @param duties what the owner does to keep it in force
 */
public record Warranty(
        String number,
        Optional<String> reissueOf,
        String job,
        List<String> owners,
        String address,
        List<Covered> walls,
        List<Covered> runs,
        List<CoveredPart> parts,
        int replyDays,
        int transfers,
        int transferNoticeDays,
        List<String> notCovered,
        List<String> duties,
        Contractor contractor) {

    public Warranty {
        owners = List.copyOf(owners);
        walls = List.copyOf(walls);
        runs = List.copyOf(runs);
        parts = List.copyOf(parts);
        notCovered = List.copyOf(notCovered);
        duties = List.copyOf(duties);
        if (parts.isEmpty() || owners.isEmpty()) {
            throw new IllegalArgumentException("a warranty without " + (parts.isEmpty() ? "parts" : "owner"));
        }
    }

    /** The number of the first certificate, this one's own where it was never reissued. */
    public String first() {
        return reissueOf.orElse(number);
    }

    /** The parts whose term runs on a day. */
    public List<CoveredPart> inForce(LocalDate on) {
        return parts.stream().filter(part -> part.isInForce(on)).toList();
    }

    /** The first day of the part that begins first. */
    public LocalDate firstDay() {
        return parts.stream()
                .map(CoveredPart::firstDay)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The last day of the part that lasts longest. */
    public LocalDate lastDay() {
        return parts.stream()
                .map(CoveredPart::lastDay)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /**
     * The same warranty for a later owner: the same terms and days, one transfer less.
     *
     * @throws IllegalStateException if it may not pass on any more
     */
    public Warranty reissued(String newNumber, List<String> newOwners) {
        if (transfers < 1) {
            throw new IllegalStateException(number + " may not pass to a later owner");
        }
        return new Warranty(
                newNumber,
                Optional.of(first()),
                job,
                newOwners,
                address,
                walls,
                runs,
                parts,
                replyDays,
                transfers - 1,
                transferNoticeDays,
                notCovered,
                duties,
                contractor);
    }
}
