/** What was signed, read back. */
package spadework.office.records;
