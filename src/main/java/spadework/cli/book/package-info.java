/** The commands on the price book. */
package spadework.cli.book;
