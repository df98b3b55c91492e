// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.time.LocalDate;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * Liability cover, as the certificate states it.
 *
 * @param limits as the certificate words them
 * @param eachOccurrence what it pays at most for one occurrence, injury and damage together; empty where nobody said
 * @param improperWork what it, or another policy beside it, pays for improper work; empty where nobody said
 * @param phone where a homeowner can ask the insurer about it
 * @param workers who insures the crew against accidents, or why nobody has to
 */
public record Insurance(
        String carrier,
        String policy,
        String limits,
        LocalDate until,
        Optional<Dollars> eachOccurrence,
        Optional<Dollars> improperWork,
        Optional<String> phone,
        Optional<String> workers) {}
