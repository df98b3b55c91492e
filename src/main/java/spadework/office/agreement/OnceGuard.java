// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.util.List;
import spadework.office.records.JobRecords;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Guard;

/** Lets something happen once in the life of a job, also when two programs try at the same time. */
public final class OnceGuard {
    private OnceGuard() {}

    /** That event may stand in the register once. */
    static Guard of(Event event) {
        return entries -> {
            if (entries.stream().anyMatch(entry -> entry.event() == event)) {
                throw new IllegalStateException("The register has it already: " + event.words() + ".");
            }
        };
    }

    /** Nobody signs the same paper twice. */
    static Guard signed(DocumentNumber paper, List<String> by) {
        return entries -> {
            for (Entry entry : entries) {
                boolean same = entry.event() == Event.SIGNATURE_RECEIVED
                        && entry.number().filter(paper::equals).isPresent()
                        && entry.fact("by")
                                .filter(names -> by.stream().anyMatch(names::contains))
                                .isPresent();
                if (same) {
                    throw new IllegalStateException("The register has that signature on " + paper.text() + " already.");
                }
            }
        };
    }

    /** A change order is decided once. */
    static Guard decided(DocumentNumber number) {
        return entries -> {
            if (entries.stream().anyMatch(entry -> JobRecords.decides(entry, number))) {
                throw new IllegalStateException("The register has a decision on " + number.text() + " already.");
            }
        };
    }
}
