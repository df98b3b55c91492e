// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.util.Optional;

/**
 * A part of a day in which one thing is done.
 *
 * @param place label of the wall; empty for the whole job
 * @param machine that runs meanwhile
 * @param from hours from the begin of the day, unrounded
 * @param to the same
 * @param crewHours of all crews that share it
 */
public record DayPart(
        Stage stage, String place, String crew, Optional<String> machine, double from, double to, double crewHours) {}
