// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.List;
import spadework.finding.Fault;

/**
 * What an examination of a register found.
 *
 * @param lines whole lines that were read
 * @param documents registered files that were compared
 * @param seal of the last line; noted elsewhere, it shows later that the register is still the same up to there
 * @param faults what was changed, lost, put in or exchanged
 * @param advice what a crash left, and gaps in the numbers: worth knowing, nothing was changed
 */
public record Examination(int lines, int documents, String seal, List<Fault> faults, List<Fault> advice) {

    public Examination {
        faults = List.copyOf(faults);
        advice = List.copyOf(advice);
    }
}
