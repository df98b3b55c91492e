/** Workbooks from a plan to XLSX. */
package spadework.press.sheet;
