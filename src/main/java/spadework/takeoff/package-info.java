// SPDX-License-Identifier: Apache-2.0
/**
 * From a job to its quantities, each with its working; to the line items they drive; and to what is ordered. It
 * knows no money: quantities are tested without prices.
 */
package spadework.takeoff;
