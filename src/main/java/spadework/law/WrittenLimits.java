// SPDX-License-Identifier: Apache-2.0
package spadework.law;

/**
 * What a written warranty limits.
 *
 * @param implied whether it limits how long implied warranties last
 * @param damages whether it leaves out incidental or consequential damages
 */
public record WrittenLimits(boolean implied, boolean damages) {}
