/** A file as text, tree and places. */
package spadework.intake.source;
