// SPDX-License-Identifier: Apache-2.0
/** The price book: show, edit, workbook. */
package spadework.office.book;
