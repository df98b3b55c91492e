// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

/**
 * Who answers for the trench, or whom to call.
 *
 * @param who in words
 * @param number or name; empty where it is written in by hand
 */
public record CrewCall(String who, String number) {}
