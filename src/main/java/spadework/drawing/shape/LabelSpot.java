// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

/**
 * Where words would like to lie.
 *
 * @param target where the middle of the words would lie best
 * @param zone the words stay inside it
 * @param reach how far from the target they may move, points
 */
public record LabelSpot(Point target, Rect zone, double reach) {}
