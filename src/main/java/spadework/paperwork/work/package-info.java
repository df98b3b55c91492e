/** The work in words, measured rows, drawings with captions. */
package spadework.paperwork.work;
