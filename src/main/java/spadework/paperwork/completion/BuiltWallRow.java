package spadework.paperwork.completion;

import java.math.BigDecimal;
import java.util.List;

/**
 * A wall as built beside the wall as agreed. What was not recorded is empty.
 *
 * @param area coated area, from the built length and depths
 * @param gallons as recorded
 * @param areaFigure square feet, for a cell
 * @param gallonsFigure gallons, for a cell; empty list where they were not recorded
 * @param film mean wet film that the gallons make
 * @param filmWorking how the film was worked out
 * @param wetPromised wet film that leaves the promised dry film
 * @param dryPromised the promised dry film
 */
public record BuiltWallRow(
        String label,
        String where,
        String lengthAgreed,
        String lengthBuilt,
        String depthAgreed,
        String depthBuilt,
        String finish,
        String area,
        String gallons,
        BigDecimal areaFigure,
        List<BigDecimal> gallonsFigure,
        String film,
        String filmWorking,
        String wetPromised,
        String dryPromised,
        List<String> batches,
        String temperature,
        List<HoldRow> holdPoints) {

    /**
     * A point at which work stopped until somebody had looked.
     *
     * @param on in words
     * @param photo number of the photo; 0 where there is none
     */
    public record HoldRow(String point, String on, String by, int photo) {}

    public BuiltWallRow {
        gallonsFigure = List.copyOf(gallonsFigure);
        batches = List.copyOf(batches);
        holdPoints = List.copyOf(holdPoints);
    }
}
