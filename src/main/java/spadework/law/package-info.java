// SPDX-License-Identifier: Apache-2.0
/**
 * What the law asks of the contract: state rules as data with citations, the check of a deposit against them, the days
 * of a right to cancel, the last day of a term, what a written warranty has to disclose and may not say. It reads no
 * file and gives no advice; what was not gathered is said to be so.
 */
package spadework.law;
