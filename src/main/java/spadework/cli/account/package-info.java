// SPDX-License-Identifier: Apache-2.0
/** Commands about money after the contract is signed. */
package spadework.cli.account;
