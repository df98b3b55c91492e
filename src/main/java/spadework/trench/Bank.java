// SPDX-License-Identifier: Apache-2.0
package spadework.trench;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import spadework.job.LimitKind;
import spadework.job.Protection;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.working.Listed;

/**
 * The outer bank of a wall's trench, as it is dug and priced.
 *
 * @param slope horizontal for each vertical; 0 when shielded or upright
 * @param soil the type that the slope follows
 * @param inTheWay what keeps the bank from being sloped although the job asks for it
 */
public record Bank(Protection protection, Listed slope, SoilType soil, Optional<SiteLimit> inTheWay) {

    /** From this depth a trench is protected (29 CFR 1926.652(a)(1), T-13). */
    public static final Length PROTECTED_FROM = Length.ofFeet(5);

    /** Noise of levels taken from one another, feet: a depth of 5 ft may come out a hair under it. */
    public static final double HAIR = 1e-6;

    /** Whether a trench that deep is protected, whatever its soil; feet from grade to its bottom. */
    public static boolean isProtectedAt(double depth) {
        return depth >= PROTECTED_FROM.feet() - HAIR;
    }

    /**
     * The bank that a wall's trench gets. Steps that the soil does not bear give way to the slope, and where that does
     * not fit before what stands beside the wall, a shield takes its place, or under 5 ft an upright bank, which the
     * competent person has to allow.
     */
    public static Bank of(Site site, Wall wall) {
        Protection asked = wall.digging().protection();
        if (asked != Protection.SLOPED && asked != Protection.BENCHED) {
            return new Bank(asked, upright(asked), soil(site), Optional.empty());
        }
        Bank cutBack = cutBack(site.soil(), asked);
        Length deepest = wall.deepestTrench();
        Length reach = cutBack.reach(wall);
        Optional<SiteLimit> inTheWay = site.limits().stream()
                .filter(limit -> limit.wall().equals(wall.label()))
                .filter(limit ->
                        room(limit).map(room -> reach.compareTo(room) > 0).orElse(false))
                .min(Comparator.comparing(limit -> room(limit).orElseThrow()));
        if (inTheWay.isPresent()) {
            Protection instead = isProtectedAt(deepest.feet()) ? Protection.SHIELDED : Protection.UPRIGHT;
            return new Bank(instead, upright(instead), cutBack.soil, inTheWay);
        }
        boolean oneStep = cutBack.protection == Protection.BENCHED && deepest.feet() <= Benching.RISE.feet() + HAIR;
        return oneStep
                ? new Bank(Protection.UPRIGHT, upright(Protection.UPRIGHT), cutBack.soil, Optional.empty())
                : cutBack;
    }

    /** Sloped, or benched where that is asked for and the soil bears it; whatever the room and the depth are. */
    public static Bank cutBack(Soil ground, Protection asked) {
        SoilType soil = soil(ground.type());
        boolean benched =
                asked == Protection.BENCHED && Benching.against(ground).isEmpty();
        String source = benched ? Benching.SOURCE : SlopeTable.SOURCE;
        return new Bank(
                benched ? Protection.BENCHED : Protection.SLOPED,
                slope(SlopeTable.run(soil), source),
                soil,
                Optional.empty());
    }

    /** The line of the bank in a trench that is so deep at its deepest place. */
    public BankLine line(Length deepest) {
        return protection == Protection.BENCHED
                ? new BankLine(slope.number(), Benching.RISE.feet(), deepest.feet())
                : BankLine.straight(slope.number());
    }

    /** The bank that the law lets stand beside a foundation in soil of that type, where there is room for it. */
    public static Bank of(SoilType classed) {
        SoilType soil = soil(classed);
        return new Bank(Protection.SLOPED, slope(SlopeTable.run(soil), SlopeTable.SOURCE), soil, Optional.empty());
    }

    /**
     * A bank that somebody lays back on his own, in soil that nobody has classed.
     *
     * @param run for each foot of rise, 0 or more; 0 is an upright bank
     */
    public static Bank ofRun(double run) {
        Protection protection = run == 0 ? Protection.UPRIGHT : Protection.SLOPED;
        return new Bank(protection, slope(run, "given"), SoilType.NOT_CLASSED, Optional.empty());
    }

    /**
     * The soil type to slope for. Soil beside a foundation was dug before, so it is never taken as better than Type B,
     * whatever the job says (29 CFR 1926 Subpart P App. A, definition of Type A (iii); T-02, T-04).
     */
    public static SoilType soil(Site site) {
        return soil(site.soil().type());
    }

    static SoilType soil(SoilType classed) {
        return classed == SoilType.A || classed == SoilType.STABLE_ROCK ? SoilType.B : classed;
    }

    /** How far the trench's top edge lies from the wall's face at its deeper end. */
    public Length reach(Wall wall) {
        Length deepest = wall.deepestTrench();
        return wall.footing()
                .projection()
                .plus(wall.digging().bottomWidth())
                .plus(Length.ofFeet(line(deepest).out(deepest.feet())));
    }

    /** How far a bank of that slope would reach. */
    public static Length reach(Wall wall, double run) {
        return reach(wall.footing().projection(), wall.digging().bottomWidth(), run, wall.deepestTrench());
    }

    /**
     * How far a trench's top edge lies from the wall's face: projection of the footing, width of the bottom, and what
     * the bank is laid back, p + B + s × H.
     *
     * @param run of the bank for each foot of rise, 0 or more
     * @param depth grade to the trench's bottom
     */
    public static Length reach(Length projection, Length bottom, double run, Length depth) {
        return projection.plus(bottom).plus(Length.ofFeet(run * depth.feet()));
    }

    /**
     * The room that a limit leaves, from the wall's face: to the thing itself, for a tree to the smaller published root
     * zone. A slope would take the ground from under a buried line, so that one keeps its ground as well. Empty where
     * it limits no slope: a tree that nobody measured or whose roots the trench meets anyhow.
     */
    private static Optional<Length> room(SiteLimit limit) {
        if (limit.kind() == LimitKind.TREE) {
            return limit.trunk()
                    .map(trunk -> limit.distance().minus(RootZone.least(trunk)))
                    .filter(Length::isPositive);
        }
        return Optional.of(limit.distance());
    }

    private static Listed upright(Protection protection) {
        return slope(0, "the bank stands upright, " + protection.name().toLowerCase(Locale.ROOT));
    }

    private static Listed slope(double run, String source) {
        return Listed.of("s", "side slope, run for each rise", run, Unit.FOOT_PER_FOOT, source);
    }
}
