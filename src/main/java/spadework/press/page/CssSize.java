// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

/**
 * The size that a style sheet gives a drawing.
 *
 * @param width in dots, negative if the style sheet gives none
 * @param height in dots, negative if the style sheet gives none
 * @param dotsPerPixel how many dots of the renderer are a CSS pixel
 */
record CssSize(double width, double height, double dotsPerPixel) {}
