// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

/**
 * A wall or pipe run that a warranty covers, as built.
 *
 * @param label as {@code A} or {@code D1}
 * @param what as the certificate says it: where the wall is, or what the pipe is
 * @param length as printed, with its unit
 */
public record CoveredRun(String label, String what, String length) {}
