// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.List;

/**
 * Whom and what a written warranty covers.
 *
 * @param who whom it covers
 * @param covered what it covers
 * @param notCovered what it does not cover
 * @param remedy what the warrantor does, and who pays
 */
public record WrittenCoverage(List<String> who, List<String> covered, List<String> notCovered, String remedy) {

    public WrittenCoverage {
        who = List.copyOf(who);
        covered = List.copyOf(covered);
        notCovered = List.copyOf(notCovered);
    }
}
