// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.money.Dollars;

/**
 * What one line item costs on this job in place of the book.
 *
 * @param materialCost the cost of one package
 * @param subcontract the subcontractor's price a unit
 */
public record PriceChange(String code, Optional<Dollars> materialCost, Optional<Dollars> subcontract, String reason) {}
