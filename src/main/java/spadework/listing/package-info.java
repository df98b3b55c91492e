// SPDX-License-Identifier: Apache-2.0
/**
 * A job for other programs, as JSON: quantities, lines, findings, faults. Money is decimal text. It computes
 * nothing.
 */
package spadework.listing;
