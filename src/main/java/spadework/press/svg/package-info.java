/** Drawings as SVG. */
package spadework.press.svg;
