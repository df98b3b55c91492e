// SPDX-License-Identifier: Apache-2.0
/**
 * Where a number comes from: given by the job, listed in a book, or worked out by a formula from other numbers. It
 * knows no rule of the trade.
 */
package spadework.working;
