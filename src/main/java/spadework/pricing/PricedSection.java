// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import spadework.money.Dollars;
import spadework.takeoff.TakeoffSection;

/**
 * The price of a section.
 *
 * @param lines the sum of its lines
 * @param rounding what rounding to the company's step adds or takes away
 * @param price what is printed: lines plus rounding
 */
public record PricedSection(TakeoffSection section, Dollars lines, Dollars rounding, Dollars price) {}
