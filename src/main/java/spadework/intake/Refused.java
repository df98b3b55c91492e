// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.util.List;
import spadework.finding.Fault;

/**
 * The job cannot be used as it stands.
 *
 * @param faults every fault of the job, company and price book, at least one, by file, line and column
 */
public record Refused(List<Fault> faults) implements Reading {

    public Refused {
        faults = List.copyOf(faults);
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("a refusal names its faults");
        }
    }
}
