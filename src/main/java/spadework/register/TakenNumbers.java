// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Which numbers were taken, and which of them wait for their document. It grows with open numbers, not with lines. */
final class TakenNumbers {
    private final Map<String, Integer> highest = new HashMap<>();
    private final Map<DocumentNumber, LocalDate> waiting = new LinkedHashMap<>();

    /** Takes note of a line; answers what is wrong with its number, if anything. */
    Optional<String> note(Entry entry) {
        if (entry.number().isEmpty()) {
            return Optional.empty();
        }
        DocumentNumber number = entry.number().get();
        if (entry.event() == Event.NUMBER_TAKEN) {
            if (number.count() <= highest.getOrDefault(number.series(), 0)) {
                return Optional.of("the number " + number + " taken a second time");
            }
            highest.put(number.series(), number.count());
            waiting.put(number, entry.on());
            return Optional.empty();
        }
        boolean waited = waiting.remove(number) != null;
        if (entry.event().issues() && !waited) {
            return Optional.of(number + " issued without having been taken, or a second time");
        }
        return Optional.empty();
    }

    /** The lowest number of a kind that is above every one taken. */
    DocumentNumber free(DocumentKind kind, String job) {
        DocumentNumber first = new DocumentNumber(job, kind, 1);
        return new DocumentNumber(job, kind, highest.getOrDefault(first.series(), 0) + 1);
    }

    /** Numbers that were taken and never issued, with the day they were taken. */
    Map<DocumentNumber, LocalDate> waiting() {
        return waiting;
    }
}
