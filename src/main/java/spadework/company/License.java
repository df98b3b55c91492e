// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The license or registration.
 *
 * @param label what the state calls it, as "Contractor registration"
 * @param classification class of the license and what it allows, where the state has classes
 * @param until its last day, where it ends
 * @param state two letters of the state that issued it; empty where it is that of the company's address
 * @param elsewhere licenses of other states
 */
public record License(
        String label,
        String number,
        Optional<String> classification,
        Optional<LocalDate> until,
        Optional<String> state,
        List<License> elsewhere) {

    public License {
        elsewhere = List.copyOf(elsewhere);
    }

    /** One of the company's own state. */
    public License(String label, String number, Optional<String> classification, Optional<LocalDate> until) {
        this(label, number, classification, until, Optional.empty(), List.of());
    }

    /** The one of a state, where there is such; else this one, which is not of that state. */
    License in(String wanted) {
        return elsewhere.stream()
                .filter(one -> one.state.filter(wanted::equals).isPresent())
                .findFirst()
                .orElse(this);
    }
}
