// SPDX-License-Identifier: Apache-2.0
/** The contract and its change orders. */
package spadework.paperwork.contract;
