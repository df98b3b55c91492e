/** The water from the side. */
package spadework.drawing.profile;
