// SPDX-License-Identifier: Apache-2.0
/** Rows that several papers print: head, notes, prices, payments, warranty. */
package spadework.paperwork.part;
