// SPDX-License-Identifier: Apache-2.0
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
 */
public record Warranty(
        String number,
        Optional<String> reissueOf,
        String job,
        WarrantyParties parties,
        WarrantyCoverage coverage,
        OwnerTerms terms) {

    /** The number of the first certificate, this one's own where it was never reissued. */
    public String first() {
        return reissueOf.orElse(number);
    }

    /** The parts whose term runs on a day. */
    public List<CoveredPart> inForce(LocalDate on) {
        return coverage.parts().stream().filter(part -> part.isInForce(on)).toList();
    }

    /** The first day of the part that begins first. */
    public LocalDate firstDay() {
        return coverage.parts().stream()
                .map(CoveredPart::firstDay)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The last day of the part that lasts longest. */
    public LocalDate lastDay() {
        return coverage.parts().stream()
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
        if (terms.transfers() < 1) {
            throw new IllegalStateException(number + " may not pass to a later owner");
        }
        return new Warranty(
                newNumber,
                Optional.of(first()),
                job,
                new WarrantyParties(newOwners, parties.address(), parties.contractor()),
                coverage,
                terms.withTransfers(terms.transfers() - 1));
    }

    /** The same warranty for whoever inherited the house or kept it in a divorce: no transfer is used up. */
    public Warranty inherited(String newNumber, List<String> newOwners) {
        return new Warranty(
                newNumber,
                Optional.of(first()),
                job,
                new WarrantyParties(newOwners, parties.address(), parties.contractor()),
                coverage,
                terms);
    }
}
