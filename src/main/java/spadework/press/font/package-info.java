/** Faces, and which letters they have. */
package spadework.press.font;
