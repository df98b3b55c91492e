// SPDX-License-Identifier: Apache-2.0
/**
 * Prices in tables: the price book as a workbook that is protected against mistakes, and workbooks and lists of
 * suppliers read back cell by cell. It says what is in a cell and what may not be; what a price means is {@code
 * intake}'s.
 */
package spadework.pricesheet;
