// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.util.Optional;
import spadework.pricebook.WorkStep;

/**
 * What one crew does in one step.
 *
 * @param machine that runs meanwhile
 * @param hours of the crew, above 0
 */
record Task(WorkStep step, String crew, Optional<String> machine, double hours) {}
