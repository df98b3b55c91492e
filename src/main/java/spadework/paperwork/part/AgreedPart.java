// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

/**
 * An option that was taken or a change order that was signed, as a part of the agreed work.
 *
 * @param label of the option, or number of the change order
 * @param on the day on which it was agreed, in words
 */
public record AgreedPart(String label, String title, String on) {}
