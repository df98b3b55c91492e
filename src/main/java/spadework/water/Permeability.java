// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.EnumMap;
import java.util.Map;
import spadework.job.Seepage;
import spadework.job.Texture;

/**
 * How fast water moves in saturated soil of a texture, in inches an hour: the least and the most that three published
 * tables give for it. They differ two to three times and more for one texture (H-29), so there is never one number.
 *
 * @param low least of the tables
 * @param high most of the tables
 * @param source the tables that have the texture
 */
public record Permeability(double low, double high, String source) {
    private static final String RAWLS = "Rawls 1998 in the Minnesota Stormwater Manual (H-26)";
    private static final String ROSETTA = "ROSETTA class means, USDA ARS (H-27)";
    private static final String GREEN_AMPT = "Green-Ampt parameter table (H-28)";
    private static final double CM = 1 / 2.54;
    private static final Map<Texture, Permeability> TABLE = table();

    /** The range of a texture; that of all of them for fill and for soil that nobody tested. */
    public static Permeability of(Texture texture) {
        return TABLE.get(texture);
    }

    /**
     * Soil whose tables all stay under this lets water through too slowly to see it run; common practice,
     * no source.
     */
    private static final double SLOW = 1;

    /**
     * The range of a texture in which water was seen to seep or not. Water that runs freely out of slow soil comes
     * through cracks, seams or old fill that the tables of its texture do not hold, so the range then reaches up to
     * the most of every texture.
     */
    public static Permeability of(Texture texture, Seepage seepage) {
        Permeability tables = of(texture);
        if (!isBeyondTables(texture, seepage)) {
            return tables;
        }
        Permeability any = of(Texture.UNKNOWN);
        return new Permeability(tables.low, any.high, "water runs freely, so up to " + any.source);
    }

    /** Whether water was seen to run freely out of soil that is slow by every table. */
    public static boolean isBeyondTables(Texture texture, Seepage seepage) {
        return seepage == Seepage.FREE && of(texture).high < SLOW;
    }

    private static Map<Texture, Permeability> table() {
        Map<Texture, Permeability> table = new EnumMap<>(Texture.class);
        table.put(
                Texture.GRAVEL,
                new Permeability(
                        26.779 * CM, 140, "from sand, " + ROSETTA + ", to clean gravel 0.1 cm/s (from memory)"));
        table.put(Texture.SAND, both(4.26, 26.779));
        table.put(Texture.LOAMY_SAND, both(3.81, 4.383));
        table.put(Texture.SANDY_LOAM, all(0.90, 1.595, 1.98));
        table.put(Texture.LOAM, all(0.205, 0.502, 0.61));
        table.put(Texture.SILT_LOAM, both(0.63, 0.760));
        table.put(Texture.SANDY_CLAY_LOAM, new Permeability(0.14, 0.44, RAWLS + "; " + GREEN_AMPT));
        table.put(Texture.CLAY_LOAM, both(0.17, 0.341));
        table.put(
                Texture.SILTY_CLAY_LOAM, new Permeability(0.06, 0.22, "from silty clay, " + RAWLS + "; " + GREEN_AMPT));
        table.put(Texture.SILTY_CLAY, all(0.06, 0.401, 0.15));
        table.put(Texture.CLAY, new Permeability(0.06, 0.615 * CM, "from silty clay, " + RAWLS + "; " + ROSETTA));
        Permeability any = new Permeability(0.06, 26.779 * CM, "every texture of " + RAWLS + "; " + ROSETTA);
        table.put(Texture.FILL, any);
        table.put(Texture.UNKNOWN, any);
        return table;
    }

    /** In H-28 in inches and in H-27 in centimeters an hour. */
    private static Permeability both(double greenAmpt, double rosettaCentimeters) {
        double rosetta = rosettaCentimeters * CM;
        String tables = ROSETTA + "; " + GREEN_AMPT;
        return new Permeability(Math.min(greenAmpt, rosetta), Math.max(greenAmpt, rosetta), tables);
    }

    private static Permeability all(double rawls, double rosettaCentimeters, double greenAmpt) {
        Permeability two = both(greenAmpt, rosettaCentimeters);
        return new Permeability(Math.min(rawls, two.low), Math.max(rawls, two.high), RAWLS + "; " + two.source);
    }
}
