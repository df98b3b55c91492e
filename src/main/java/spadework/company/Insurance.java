// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Liability cover, as the certificate states it.
 *
 * @param phone where a homeowner can ask the insurer about it
 * @param workers who insures the crew against accidents, or why nobody has to
 */
public record Insurance(
        String carrier,
        String policy,
        String limits,
        LocalDate until,
        Optional<String> phone,
        Optional<String> workers) {}
