// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.List;
import spadework.paperwork.part.FindingNote;

/**
 * Findings, and what the office noted for itself.
 *
 * @param beforeSigning what is missing in the contract, so that nobody signs it
 */
public record CostNotes(List<FindingNote> beforeSigning, List<FindingNote> findings, List<String> internal) {

    public CostNotes {
        beforeSigning = List.copyOf(beforeSigning);
        findings = List.copyOf(findings);
        internal = List.copyOf(internal);
    }
}
