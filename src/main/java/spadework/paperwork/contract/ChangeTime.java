// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

/**
 * What a change does to the time.
 *
 * @param days working days that it adds; below zero when it takes some away
 * @param finishBefore the finish date before it, in words
 * @param finishAfter the finish date with it; empty where it is not worked out
 */
public record ChangeTime(int days, String finishBefore, String finishAfter) {}
