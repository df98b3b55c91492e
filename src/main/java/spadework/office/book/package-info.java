/** The price book: show, edit, workbook. */
package spadework.office.book;
