// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.math.BigDecimal;
import spadework.money.Dollars;
import spadework.pricing.UnitPrice;

/** So much at one agreed unit price; the amount is their product, rounded half up to a cent. */
public record UnitLine(UnitPrice price, BigDecimal quantity, Dollars amount) {}
