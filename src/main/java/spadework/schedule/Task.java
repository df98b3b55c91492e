// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.util.Optional;

/**
 * What one crew does in one stage.
 *
 * @param place label of the wall; empty for the whole job
 * @param machine that runs meanwhile
 * @param hours of the crew, above 0
 */
record Task(Stage stage, String place, String crew, Optional<String> machine, double hours) {}
