// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.List;
import spadework.paperwork.part.FindingNote;

/** Findings, and what the office noted for itself. */
public record CostNotes(List<FindingNote> findings, List<String> internal) {

    public CostNotes {
        findings = List.copyOf(findings);
        internal = List.copyOf(internal);
    }
}
