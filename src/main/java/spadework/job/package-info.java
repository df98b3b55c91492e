// SPDX-License-Identifier: Apache-2.0
/**
 * What was measured at the house and promised to its owner, as immutable records. Nothing here is computed, priced
 * or read from a file.
 */
package spadework.job;
