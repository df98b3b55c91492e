/** The note that goes with the papers. */
package spadework.paperwork.letter;
