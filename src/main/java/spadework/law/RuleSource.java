// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the rules of a state come from.
 *
 * @param facts how far each kind of fact was read, by its name: {@code R} read, {@code RX} excerpt, {@code RS}
 *     secondary source, {@code M} from memory
 * @param notes what else there is to know
 * @param asOf the day on which this was put together
 * @param counsel who read them in the law itself for the contractor
 */
public record RuleSource(
        Map<String, String> facts, List<String> notes, List<String> citations, String asOf, Optional<Counsel> counsel) {

    public RuleSource {
        notes = List.copyOf(notes);
        citations = List.copyOf(citations);
    }
}
