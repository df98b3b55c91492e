// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import spadework.measure.Length;

/**
 * One straight wall that is dug down to its footing. Its parts answer by name here as well.
 *
 * @param label the letter or name that every drawing, price and paper uses
 * @param where the wall in the homeowner's words, as "back wall, kitchen side"
 * @param windowWells number of window wells that are removed and put back
 */
@RecordBuilder
public record Wall(
        String label,
        String where,
        WallPlace place,
        WallDepth depth,
        Footing footing,
        WallSurface surface,
        List<Opening> openings,
        int windowWells,
        Digging digging)
        implements WallBuilder.With {

    public Wall {
        openings = List.copyOf(openings);
    }

    public Side faces() {
        return place.faces();
    }

    public Length from() {
        return place.from();
    }

    public Length length() {
        return place.length();
    }

    public Length depthStart() {
        return depth.start();
    }

    public Length depthEnd() {
        return depth.end();
    }

    public WallKind kind() {
        return surface.kind();
    }

    public Condition condition() {
        return surface.condition();
    }

    public List<String> strip() {
        return surface.strip();
    }

    public Finish finish() {
        return surface.finish();
    }

    /** The deeper end, grade to the top of the footing. */
    public Length deepest() {
        return depth.deepest();
    }

    /** Trench depth at the deeper end: to the bottom of the footing. */
    public Length deepestTrench() {
        return deepest().plus(footing.thickness());
    }

    /** The same wall with another finish. */
    public Wall withFinish(Finish other) {
        return withSurface(surface.withFinish(other));
    }

    /** The same wall, of another length. */
    public Wall withLength(Length other) {
        return withPlace(place.withLength(other));
    }

    /** The same wall, dug that much deeper at both ends. */
    public Wall deeperBy(Length more) {
        return withDepth(depth.plus(more));
    }

    /** The same wall as it was measured in the open trench. */
    public Wall asBuilt(Length builtLength, Length builtStart, Length builtEnd) {
        return withLength(builtLength).withDepth(new WallDepth(builtStart, builtEnd));
    }
}
