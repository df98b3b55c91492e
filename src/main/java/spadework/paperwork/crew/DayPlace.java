// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

/**
 * A trench or a pit that may stand open on a day.
 *
 * @param label short, and of no other place of the job
 * @param what it is
 */
public record DayPlace(String label, String what) {}
