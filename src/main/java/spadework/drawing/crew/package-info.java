/** Crews by day. */
package spadework.drawing.crew;
