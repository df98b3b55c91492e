// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Area;
import spadework.measure.Length;

/**
 * What is put back.
 *
 * @param regrade length of wall along which the soil is shaped to fall away
 * @param topsoil area that gets topsoil
 * @param topsoilDepth how deep
 * @param concrete area of walk or slab that is broken out and poured again
 * @param plants shrubs taken up and set back
 */
public record Restoration(
        Length regrade, Area topsoil, Length topsoilDepth, Area seed, Area sod, Area concrete, int plants) {

    /** This and more, at this depth of topsoil. */
    public Restoration plus(Restoration more) {
        return new Restoration(
                regrade.plus(more.regrade),
                sum(topsoil, more.topsoil, 1),
                topsoilDepth,
                sum(seed, more.seed, 1),
                sum(sod, more.sod, 1),
                sum(concrete, more.concrete, 1),
                plants + more.plants);
    }

    /** This without some of it; never less than nothing. */
    public Restoration minus(Restoration less) {
        return new Restoration(
                Length.ofFeet(Math.max(0, regrade.minus(less.regrade).feet())),
                sum(topsoil, less.topsoil, -1),
                topsoilDepth,
                sum(seed, less.seed, -1),
                sum(sod, less.sod, -1),
                sum(concrete, less.concrete, -1),
                Math.max(0, plants - less.plants));
    }

    private static Area sum(Area one, Area other, int sign) {
        return Area.ofSquareFeet(Math.max(0, one.squareFeet() + sign * other.squareFeet()));
    }
}
