// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

/**
 * A finding in words.
 *
 * @param severity {@code stop}, {@code must} or {@code advise}
 * @param accepted who answers for a stop and why, empty otherwise
 */
public record FindingNote(
        String id, String severity, String about, String what, String action, String citation, String accepted) {}
