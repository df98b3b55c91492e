// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;

/**
 * A stop that somebody answers for.
 *
 * @param finding id of the finding
 * @param about what it is about, as the finding names it; empty when about the whole job
 * @param by who accepted it
 * @param why on what ground
 */
public record AcceptedStop(String finding, String about, String by, String why, LocalDate on) {}
