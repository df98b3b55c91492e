// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import spadework.pricebook.Section;

/**
 * A heading of the takeoff and of the price.
 *
 * @param label the wall's label, or the section's own
 * @param name as printed, as {@code Wall A, back wall}
 */
public record TakeoffSection(Section kind, String label, String name) {}
