// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.warranty.Warranty;

/**
 * A line of the register.
 *
 * @param line its place, from 1
 * @param on the date of what it tells, given by whoever wrote it
 * @param number of the document it is about
 * @param revision of that document; 0 when there is no number
 * @param facts what else there is to know, in the order in which it was given
 * @param warranty the whole warranty, in the line that issues its certificate
 * @param previous SHA-256 of the bytes of the line before, without its line feed; 64 zeros in the first line
 * @param seal SHA-256 of this line's bytes up to the seal
 */
public record Entry(
        int line,
        LocalDate on,
        Event event,
        Optional<DocumentNumber> number,
        int revision,
        List<RegisteredFile> files,
        Map<String, String> facts,
        Optional<Warranty> warranty,
        String previous,
        String seal) {

    public Entry {
        files = List.copyOf(files);
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    /** A fact by its name. */
    public Optional<String> fact(String name) {
        return Optional.ofNullable(facts.get(name));
    }
}
