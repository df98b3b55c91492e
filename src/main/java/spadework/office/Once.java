package spadework.office;

import spadework.register.DocumentNumber;
import spadework.register.Event;
import spadework.register.Guard;

/** Lets something happen once in the life of a job, also when two programs try at the same time. */
final class Once {
    private Once() {}

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
            if (entries.stream().anyMatch(entry -> Records.decides(entry, number))) {
                throw new IllegalStateException("The register has a decision on " + number.text() + " already.");
            }
        };
    }
}
