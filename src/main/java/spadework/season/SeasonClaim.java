// SPDX-License-Identifier: Apache-2.0
package spadework.season;

import spadework.money.Dollars;

/**
 * A claim on a warranty.
 *
 * @param cause what brought the water, or how far the claim is where nobody has said
 * @param cost what it cost the contractor so far
 */
public record SeasonClaim(String number, String cause, Dollars cost) {}
