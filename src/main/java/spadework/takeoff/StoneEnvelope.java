// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.takeoff.wall.BenchedWall;
import spadework.takeoff.wall.DugWall;
import spadework.takeoff.wall.TrenchGeometry;
import spadework.takeoff.wall.Trenches;
import spadework.takeoff.wall.WallMeasures;
import spadework.trench.Benching;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * The stone around a footing drain: at least 6 in above the footing's top, 2 in under the pipe and 6 in over it (IRC
 * R405.1; F-04, F-05, F-06). Whichever of the two is higher governs.
 */
public final class StoneEnvelope {
    static final String CODE = "IRC R405.1";

    private static final int ROLL_FEET = 100;

    private StoneEnvelope() {}

    static Listed outside(Pipe pipe) {
        return Listed.of("OD", "outside diameter of the pipe", pipe.outside().feet(), Unit.FOOT, pipe.standard());
    }

    /**
     * Volume of the stone along one wall with the corners counted with it, cubic yards; negative where a short wall's
     * stone lies within that of its neighbors.
     */
    static Worked volume(Trenches trenches, FootingDrain drain, WallMeasures m, Pipe pipe) {
        StoneProfile profile = trenches.stoneAt(m.wall().label());
        List<DugWall.Term> terms = new ArrayList<>();
        terms.add(new DugWall.Term(true, along(m, profile, pipe)));
        for (Corner corner : trenches.cornersOf(m.wall())) {
            String other = corner.second().wall();
            if (trenches.drainAt(trenches.at(other).wall())
                    .filter(drain::equals)
                    .isPresent()) {
                terms.add(new DugWall.Term(
                        corner.kind() == CornerKind.OUTSIDE,
                        DugWall.volume(
                                "Cs" + terms.size(),
                                StoneHeights.atCorner(trenches, corner, pipe),
                                m,
                                trenches.at(other))));
            }
        }
        terms.addAll(DugWall.shared("Us", trenches.stoneSharedBy(m.wall())));
        return DugWall.sum("S", "drain stone, in place", terms);
    }

    private static Worked along(WallMeasures m, StoneProfile profile, Pipe pipe) {
        if (profile.isLevel() && !m.line().isBenched()) {
            Worked area = area("As", m, StoneHeights.level(m, profile, pipe), outside(pipe));
            return Worked.of(
                    "Vs",
                    "stone along the wall",
                    m.length().number() * area.number(),
                    Unit.CUBIC_FOOT,
                    new Formula("L × As", "length times section"),
                    m.length(),
                    area);
        }
        List<Working> pieces = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        List<StoneStation> stations = profile.split(m.line().steps());
        for (int i = 1; i < stations.size(); i++) {
            Worked piece = piece("V" + i, m, stations.get(i - 1), stations.get(i), pipe);
            pieces.add(piece);
            formula.append(formula.isEmpty() ? "" : " + ").append(piece.symbol());
            sum += piece.number();
        }
        return Worked.of(
                "Vs",
                "stone along the wall",
                sum,
                Unit.CUBIC_FOOT,
                new Formula(formula.toString(), "from station to station"),
                pieces.toArray(Working[]::new));
    }

    /** The stone between two stations, where its top is straight and its section therefore a quadratic. */
    private static Worked piece(String symbol, WallMeasures m, StoneStation from, StoneStation to, Pipe pipe) {
        Listed outside = outside(pipe);
        Given length = Given.of(
                "Lk",
                "from one station to the next",
                to.at() - from.at(),
                Unit.FOOT,
                "stations of the pipe along wall " + m.wall().label());
        Worked first = StoneHeights.at("h1", m, from, pipe);
        Worked last = StoneHeights.at("h2", m, to, pipe);
        Worked middle = Worked.of(
                "hm",
                "height half-way",
                (first.number() + last.number()) / 2,
                Unit.FOOT,
                new Formula("(h1 + h2) ÷ 2", "straight between stations"),
                first,
                last);
        Worked a0 = area("A0", m, first, outside);
        Worked am = area("Am", m, middle, outside);
        Worked a1 = area("A1", m, last, outside);
        return Worked.of(
                symbol,
                "stone from " + Figures.inWorking(BigDecimal.valueOf(from.at())) + " to "
                        + Figures.inWorking(BigDecimal.valueOf(to.at())) + " ft",
                TrenchGeometry.prismoid(length.number(), a0.number(), am.number(), a1.number()),
                Unit.CUBIC_FOOT,
                new Formula("Lk ÷ 6 × (A0 + 4 × Am + A1)", "prismoidal rule, exact for a straight top"),
                length,
                a0,
                am,
                a1);
    }

    /**
     * Section of the stone without the pipe in it, square feet: a trapezoid beside the footing, the strip over the
     * footing's projection, less the circle of the pipe. All in feet and not negative.
     *
     * @param width of the trench's bottom, beside the footing
     * @param height of the stone above the trench's bottom
     * @param slope of the bank, run for each rise
     * @param outside outside diameter of the pipe; 0 without one
     */
    public static double section(
            double width, double height, double slope, double projection, double footing, double outside) {
        return width * height
                + slope * height * height / 2
                + projection * Math.max(height - footing, 0)
                - Math.PI * outside * outside / 4;
    }

    private static Worked area(String symbol, WallMeasures m, Worked height, Listed outside) {
        if (m.line().isBenched()) {
            return benched(symbol, m, height, outside);
        }
        double value = section(
                m.width().number(),
                height.number(),
                m.slope().number(),
                m.projection().number(),
                m.footing().number(),
                outside.number());
        String h = height.symbol();
        return Worked.of(
                symbol,
                "section of the stone without the pipe",
                value,
                Unit.SQUARE_FOOT,
                new Formula(
                        "B × " + h + " + s × " + h + "^2 ÷ 2 + p × max(" + h + " − tf, 0) − π × OD^2 ÷ 4",
                        "area of a trapezoid less a circle"),
                m.width(),
                height,
                m.slope(),
                m.projection(),
                m.footing(),
                outside);
    }

    /** Between upright banks up to the first step, and step by step above it. */
    private static Worked benched(String symbol, WallMeasures m, Worked height, Listed outside) {
        double upright = section(
                m.width().number(),
                height.number(),
                0,
                m.projection().number(),
                m.footing().number(),
                outside.number());
        String h = height.symbol();
        return Worked.of(
                symbol,
                "section of the stone without the pipe",
                upright + m.line().area(height.number()),
                Unit.SQUARE_FOOT,
                new Formula(
                        "B × " + h + BenchedWall.term(m.line(), height.number(), h) + " + p × max(" + h
                                + " − tf, 0) − π × OD^2 ÷ 4",
                        "rectangles from step to step less a circle"),
                m.width(),
                height,
                m.slope(),
                m.projection(),
                m.footing(),
                outside,
                BenchedWall.top(m));
    }

    /** Fabric over the top of the stone only, square yards: one of the two ways of IRC R405.1. */
    static Worked fabric(WallMeasures m, StoneProfile profile, Pipe pipe) {
        Worked height = StoneHeights.mean(m, profile, pipe);
        Worked width = m.line().isBenched()
                ? between(m, height)
                : Worked.of(
                        "wf",
                        "width of the fabric, 6 in up the wall and 6 in up the bank",
                        m.projection().number()
                                + m.width().number()
                                + m.slope().number() * height.number()
                                + FabricRule.bothEdges(),
                        Unit.FOOT,
                        new Formula(
                                "p + B + s × hs + 6 ÷ 12 + 6 ÷ 12",
                                CODE + "; turned-up edges are common practice, no source"),
                        m.projection(),
                        m.width(),
                        m.slope(),
                        height);
        double laps = WholePackages.roundUp(m.length().number() / ROLL_FEET);
        Worked lapCount = Worked.of(
                "j",
                "laps, one for each roll begun",
                laps,
                Unit.EACH,
                new Formula("ceil(L ÷ " + ROLL_FEET + ")", "rolls of 100 ft; common practice, no source"),
                m.length());
        return Worked.of(
                "Fa",
                "fabric over the top of the stone",
                (m.length().number() + laps * FabricRule.LAP.feet()) * width.number() / 9,
                Unit.SQUARE_YARD,
                new Formula("(L + j × 12 ÷ 12) × wf ÷ 9", "12 in lap; common practice, no source"),
                m.length(),
                lapCount,
                width);
    }

    /** Width of the fabric where the bank has steps. */
    private static Worked between(WallMeasures m, Worked height) {
        Listed out = Listed.of(
                "o",
                "how far the bank stands out at the stone's top",
                m.line().out(height.number()),
                Unit.FOOT,
                Benching.SOURCE);
        return Worked.of(
                "wf",
                "width of the fabric, 6 in up the wall and 6 in up the bank",
                m.projection().number() + m.width().number() + out.number() + FabricRule.bothEdges(),
                Unit.FOOT,
                new Formula("p + B + o + 6 ÷ 12 + 6 ÷ 12", CODE + "; turned-up edges are common practice, no source"),
                m.projection(),
                m.width(),
                out);
    }
}
