// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.money.Dollars;

/**
 * Who stands behind the money of a contract.
 *
 * @param specialOrder cost of special-order material that must be ordered before the work starts
 * @param depositHeld where payments are held in trust, or who bonds them
 * @param lienOnHome whether the contract gives a claim on the home as security
 * @param financed whether anybody lends the buyer the price
 */
public record Financing(
        Optional<Dollars> specialOrder, Optional<String> depositHeld, boolean lienOnHome, boolean financed) {}
