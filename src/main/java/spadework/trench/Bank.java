package spadework.trench;

import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.working.Listed;

/**
 * The outer bank of a wall's trench.
 *
 * @param slope horizontal for each vertical; 0 when shielded or upright
 * @param soil the type that the slope follows
 */
public record Bank(Protection protection, Listed slope, SoilType soil) {

    /**
     * The bank that a wall's trench gets. Soil beside a foundation was dug before, so it is never taken as better than
     * Type B, whatever the job says (29 CFR 1926 Subpart P App. A, definition of Type A (iii); T-02, T-04).
     */
    public static Bank of(Wall wall, SoilType classed) {
        SoilType soil = classed == SoilType.A ? SoilType.B : classed;
        Protection protection = wall.digging().protection();
        double run = protection == Protection.SLOPED ? SlopeTable.run(soil) : 0;
        String source = protection == Protection.SLOPED
                ? SlopeTable.SOURCE
                : "the bank stands upright, " + protection.name().toLowerCase(java.util.Locale.ROOT);
        return new Bank(protection, Listed.of("s", "side slope, run for each rise", run, Unit.FOOT_PER_FOOT, source), soil);
    }

    /** How far the trench's top edge lies from the wall's face at its deeper end: p + B + s × H. */
    public Length reach(Wall wall) {
        return Length.ofFeet(wall.footing().projection().feet()
                + wall.digging().bottomWidth().feet()
                + slope.number() * wall.deepestTrench().feet());
    }
}
