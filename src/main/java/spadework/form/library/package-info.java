/** The second window: book, bids, lessons. */
package spadework.form.library;
