/** The trench at a wall. */
package spadework.drawing.section;
