// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

/** The sloped face at an end where a trench stops in the open. */
final class EndFace {
    private EndFace() {}

    /**
     * Bank volume of the end, cubic feet: ∫ e·z·(B + s·z + [z > tf]·p) dz from 0 to H. All in feet, none negative.
     *
     * @param run of the end's own face, for each rise; the bank's where nothing else is said, 0 where it stands upright
     * @param width of the trench's bottom beside the footing
     * @param slope of the bank along the wall
     * @param height grade to the trench's bottom at that end
     */
    static double volume(double run, double width, double slope, double projection, double footing, double height) {
        double inner = Math.min(footing, height);
        return run
                * (width * height * height / 2
                        + slope * height * height * height / 3
                        + projection * (height * height - inner * inner) / 2);
    }
}
