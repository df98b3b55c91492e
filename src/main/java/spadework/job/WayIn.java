// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/**
 * The way into the house that stays open during the work.
 *
 * @param door in the homeowner's words, as "front door at wall C"
 */
public record WayIn(WayInKind by, String door) {}
