// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A utility locate request that was made.
 *
 * @param number of the request
 * @param until its last valid day, where it was written down
 */
public record LocateTicket(String number, Optional<LocalDate> until) {}
