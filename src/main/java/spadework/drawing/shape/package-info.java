/** Lines, words and labels on a sheet, in points. */
package spadework.drawing.shape;
