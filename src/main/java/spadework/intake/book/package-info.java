/** The price book. */
package spadework.intake.book;
