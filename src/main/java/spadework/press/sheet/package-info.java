// SPDX-License-Identifier: Apache-2.0
/** Workbooks from a plan to XLSX. */
package spadework.press.sheet;
