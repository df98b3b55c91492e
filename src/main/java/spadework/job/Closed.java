// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The end of the work.
 *
 * @param completed the day from which the warranty runs
 * @param certificate number of the warranty certificate; empty until it is issued
 * @param balanceWaived why the warranty was issued although a balance is open
 */
public record Closed(LocalDate completed, Optional<String> certificate, Optional<String> balanceWaived) {}
