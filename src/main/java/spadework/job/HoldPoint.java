// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A point at which work stopped until somebody had looked.
 *
 * @param point what was looked at, as "washed and dry"
 * @param photo file in the job's folder
 */
public record HoldPoint(String point, LocalDate on, String by, Optional<String> photo) {}
