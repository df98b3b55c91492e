// SPDX-License-Identifier: Apache-2.0
/** Papers about money after the contract is signed: invoice, receipt, statement of account, late notice, release. */
package spadework.paperwork.billing;
