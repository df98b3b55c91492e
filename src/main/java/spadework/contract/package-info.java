// SPDX-License-Identifier: Apache-2.0
/**
 * From the proposal to the contract and its changes: what each option and change order adds to the work and to the
 * price, and what the contract comes to. Each is the difference of two jobs that went the same path, or a count at
 * agreed unit prices.
 */
package spadework.contract;
