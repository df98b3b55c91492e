// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;

/**
 * Water put in at the top and looked for at the end.
 *
 * @param what where it went in and where it came out, in words
 * @param by who saw it
 */
public record FlowTest(LocalDate on, boolean passed, String what, String by) {}
