// SPDX-License-Identifier: Apache-2.0
/**
 * What was billed and what came in, once a contract is signed: each payment of the contract and each change order is
 * billed once, money is taken only against a bill, and a release says no more than was paid.
 */
package spadework.billing;
