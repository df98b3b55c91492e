// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.util.Optional;
import spadework.paperwork.PaperWords;
import spadework.warranty.Claim;
import spadework.warranty.ClaimStep;

/**
 * A claim of an earlier owner, as a later owner reads it.
 *
 * @param made the day it was made
 * @param seen what was seen
 * @param where label of the wall or pipe that it named
 * @param decided the day it was decided
 * @param covered whether it was covered; empty while nobody has decided it
 * @param clause the line of the certificate that it was turned down by
 * @param cause what brought the water, as it was found
 * @param remedy what was done
 */
public record EarlierClaim(
        String number,
        String made,
        Optional<String> seen,
        Optional<String> where,
        Optional<String> decided,
        Optional<Boolean> covered,
        Optional<String> clause,
        Optional<String> cause,
        Optional<String> remedy) {

    static EarlierClaim of(PaperWords terms, Claim claim) {
        return new EarlierClaim(
                claim.number(),
                terms.day(claim.opened()),
                claim.last(ClaimStep::seen),
                claim.last(ClaimStep::wall),
                claim.decided().map(terms::day),
                claim.last(ClaimStep::covered),
                claim.last(ClaimStep::clause),
                claim.last(ClaimStep::cause),
                claim.last(ClaimStep::remedy));
    }
}
