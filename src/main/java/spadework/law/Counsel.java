// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.time.LocalDate;

/**
 * A lawyer who read the rules of a state in the law itself for the contractor.
 *
 * @param on the day up to which the law was read
 */
public record Counsel(String by, LocalDate on) {}
