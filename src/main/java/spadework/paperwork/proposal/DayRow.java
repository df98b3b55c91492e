// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

/**
 * What happens on some days, for the homeowner.
 *
 * @param days as {@code Days 2 to 4}
 * @param what one or two sentences
 */
public record DayRow(String days, String what) {}
