// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import spadework.job.WaitFor;

/**
 * What work waits for.
 *
 * @param until the first day on which it may go on
 */
record Wait(WaitFor what, LocalDate until) {}
