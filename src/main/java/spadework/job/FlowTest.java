// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Water put in at the top and looked for at the end.
 *
 * @param what where it went in and where it came out, in words
 * @param by who saw it
 * @param line label of the drain or roof line that was tested
 */
public record FlowTest(LocalDate on, boolean passed, String what, String by, Optional<String> line) {

    /** One that does not say of which line. */
    public FlowTest(LocalDate on, boolean passed, String what, String by) {
        this(on, passed, what, by, Optional.empty());
    }
}
