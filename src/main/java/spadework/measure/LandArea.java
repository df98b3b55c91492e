// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.List;

/** Areas as land is measured, besides what a job file may say: acres and square miles too. */
public final class LandArea {
    /** 43,560 sf in an acre. */
    public static final double SQUARE_FEET_PER_ACRE = 43_560;

    private LandArea() {}

    /**
     * Reads {@code 5 acre}, {@code 0.2 mi2}, {@code 1,600 sf}, {@code 94 sy} or {@code 79 m2}.
     *
     * @throws UnreadableMeasure if the text is not an area with its unit
     */
    public static Area parse(String text) throws UnreadableMeasure {
        NumberAndUnit written =
                NumberAndUnit.read(text, "an area", "5 acre", List.of("sf", "sy", "m2", "acre", "acres", "mi2"));
        return switch (written.unit()) {
            case "acre", "acres" -> new Area(written.number() * SQUARE_FEET_PER_ACRE);
            case "mi2" -> new Area(written.number() * 640 * SQUARE_FEET_PER_ACRE);
            case "sy" -> new Area(written.number() * 9);
            case "m2" -> new Area(written.number() / (0.3048 * 0.3048));
            default -> new Area(written.number());
        };
    }
}
