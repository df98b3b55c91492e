// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.List;

/**
 * A finding in words.
 *
 * @param severity {@code stop}, {@code must} or {@code advise}
 * @param about in words, as {@code A and B}
 * @param labels each of what it is about
 * @param accepted who answers for a stop and why, empty otherwise
 */
public record FindingNote(
        String id,
        String severity,
        String about,
        List<String> labels,
        String what,
        String action,
        String citation,
        String accepted) {

    public FindingNote {
        labels = List.copyOf(labels);
    }
}
