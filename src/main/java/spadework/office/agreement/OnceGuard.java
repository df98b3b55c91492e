package spadework.office.agreement;

import spadework.office.records.JobRecords;
import spadework.register.DocumentNumber;
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

    /** A change order is decided once. */
    static Guard decided(DocumentNumber number) {
        return entries -> {
            if (entries.stream().anyMatch(entry -> JobRecords.decides(entry, number))) {
                throw new IllegalStateException("The register has a decision on " + number.text() + " already.");
            }
        };
    }
}
