package spadework.job;

import java.util.List;
import spadework.measure.Length;

/**
 * One straight wall that is dug free.
 *
 * @param label the letter or name that every drawing, price and paper uses
 * @param where the wall in the homeowner's words, as "back wall, kitchen side"
 * @param from distance of the wall's start from the west corner (north and south sides) or the north corner (east
 *     and west sides) of the house
 * @param depthStart grade to the top of the footing at the start
 * @param depthEnd the same at the end; straight between
 * @param strip codes of the items that take a failed system off; empty when there is none
 * @param windowWells number of window wells that are taken out and set back
 */
public record Wall(
        String label,
        String where,
        Side faces,
        Length from,
        Length length,
        Length depthStart,
        Length depthEnd,
        Footing footing,
        WallKind kind,
        Condition condition,
        List<String> strip,
        List<Opening> openings,
        int windowWells,
        Finish finish,
        Digging digging) {

    public Wall {
        strip = List.copyOf(strip);
        openings = List.copyOf(openings);
    }

    /** The deeper end, grade to the top of the footing. */
    public Length deepest() {
        return depthStart.compareTo(depthEnd) >= 0 ? depthStart : depthEnd;
    }

    /** Trench depth at the deeper end: to the bottom of the footing. */
    public Length deepestTrench() {
        return deepest().plus(footing.thickness());
    }

    /** The same wall with another finish. */
    public Wall withFinish(Finish other) {
        return new Wall(
                label,
                where,
                faces,
                from,
                length,
                depthStart,
                depthEnd,
                footing,
                kind,
                condition,
                strip,
                openings,
                windowWells,
                other,
                digging);
    }

    /** The same wall as it was measured in the open trench. */
    public Wall asBuilt(Length builtLength, Length builtStart, Length builtEnd) {
        return new Wall(
                label,
                where,
                faces,
                from,
                builtLength,
                builtStart,
                builtEnd,
                footing,
                kind,
                condition,
                strip,
                openings,
                windowWells,
                finish,
                digging);
    }

    /** The same wall, of another length. */
    public Wall withLength(Length other) {
        return new Wall(
                label,
                where,
                faces,
                from,
                other,
                depthStart,
                depthEnd,
                footing,
                kind,
                condition,
                strip,
                openings,
                windowWells,
                finish,
                digging);
    }

    /** The same wall, dug that much deeper at both ends. */
    public Wall deeperBy(Length more) {
        return new Wall(
                label,
                where,
                faces,
                from,
                length,
                depthStart.plus(more),
                depthEnd.plus(more),
                footing,
                kind,
                condition,
                strip,
                openings,
                windowWells,
                finish,
                digging);
    }
}
