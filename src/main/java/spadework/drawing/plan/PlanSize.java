// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

/**
 * How large a plan is drawn, in points; the letters are the same on each.
 *
 * @param width of the sheet
 * @param leastHeight the least that the house takes from top to bottom
 * @param mostHeight the most that it takes
 * @param figure what house and surroundings usually take from top to bottom
 */
record PlanSize(double width, double leastHeight, double mostHeight, double figure) {
    /** Beside other things on a page. */
    static final PlanSize AMONG_OTHERS = new PlanSize(470, 100, 150, 206);

    /** On a page of its own that lies on its side, letter or A4, under a heading and over a key of several rows. */
    static final PlanSize WHOLE_PAGE = new PlanSize(670, 150, 280, 350);

    /** Across an upright page, over a list of the walls. */
    static final PlanSize ACROSS_PAGE = new PlanSize(470, 100, 140, 196);

    /** The same with the figure that many points lower. */
    PlanSize lowerBy(double points) {
        return new PlanSize(width, leastHeight - points, mostHeight - points, figure - points);
    }
}
