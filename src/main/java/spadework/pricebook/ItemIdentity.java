// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import spadework.measure.Unit;

/**
 * What an item goes by.
 *
 * @param code our own short name, as {@code DIG-MACH}
 * @param name the trade name
 * @param homeowner what it is, for the homeowner
 */
public record ItemIdentity(String code, Section section, String name, String homeowner, Unit unit) {}
