// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import spadework.money.Dollars;
import spadework.takeoff.TakeoffSection;

/**
 * The printed price of a section.
 *
 * @param price what the homeowner reads, rounded to the company's step
 */
public record SectionPrice(TakeoffSection section, Dollars price) {}
