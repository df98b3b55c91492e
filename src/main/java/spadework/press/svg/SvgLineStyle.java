// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/**
 * How a line of a drawing looks: black ink, and one deep accent for water that stays dark in gray. Kinds of line differ
 * in weight and dash as well, so that none depends on color.
 */
public final class SvgLineStyle {
    private static final String BLACK = "#000000";
    private static final String WATER = "#1f4e5f";
    private static final String GROUND = "#595959";
    private static final String EARTH = "#707070";
    private static final String OPEN_GROUND = "#8f8f8f";
    private static final String CONCRETE = "#e2e2e2";

    private SvgLineStyle() {}

    static String color(Role role) {
        return switch (role) {
            case DRAIN, MAIN, ROOF_LINE, EXTRA_PIPE, WATER -> WATER;
            case LIMIT, GROUND -> GROUND;
            case SOIL, STONE -> EARTH;
            case DUG, EXTRA_DUG -> OPEN_GROUND;
            case HOUSE, WALL, EXTRA_WALL, FABRIC, COATING, SHIELD, UNMEASURED, DIMENSION, BREAK, PLAIN -> BLACK;
        };
    }

    /** What fills an area; {@code none} leaves it open. */
    public static String tint(Role role) {
        return role == Role.WALL || role == Role.UNMEASURED ? CONCRETE : "none";
    }

    /** Stroke width in points. */
    static double width(Weight weight) {
        return switch (weight) {
            case THIN -> 0.6;
            case MEDIUM -> 1.2;
            case THICK -> 3.6;
        };
    }

    /** Dash and gap in points; empty for a solid line. */
    public static String dash(Role role) {
        return switch (role) {
            case DRAIN -> "4.00 2.40";
            case ROOF_LINE -> "8.00 1.80 1.40 1.80";
            case LIMIT -> "11.00 4.00";
            case FABRIC -> "5.00 1.80";
            case EXTRA_WALL -> "7.00 3.00";
            case EXTRA_DUG -> "2.40 2.40";
            case EXTRA_PIPE -> "1.20 2.20";
            case UNMEASURED -> "1.20 1.80";
            default -> "";
        };
    }
}
