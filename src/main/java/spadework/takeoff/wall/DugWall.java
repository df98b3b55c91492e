// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.ArrayList;
import java.util.List;
import spadework.ground.FreeEnds;
import spadework.ground.Overlap;
import spadework.ground.Slice;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** The soil that is dug at one wall, with the corners that are counted with it. */
public final class DugWall {
    private static final String CUT = "rectangles of the trenches cut level, each place once, less their signed sum";

    /** Slices that a working lists one by one; of more it tells how many they are. */
    private static final int LISTED = 12;

    private DugWall() {}

    /** Bank volume in cubic yards; negative where a short wall's trench lies within those of its neighbors. */
    public static Worked bank(Trenches trenches, Wall wall) {
        WallMeasures m = trenches.at(wall);
        List<Term> terms = new ArrayList<>(List.of(new Term(true, straight(m))));
        terms.addAll(corners(trenches, m));
        terms.addAll(ends(trenches, m));
        trenches.wellsOf(wall)
                .filter(wells -> wells.width() > 0)
                .ifPresent(wells -> terms.add(new Term(true, BodyDug.cubicFeet("Vw", wells))));
        terms.addAll(shared("U", trenches.soilSharedBy(wall)));
        return sum("D", "soil dug, bank", terms);
    }

    private static Worked straight(WallMeasures m) {
        if (m.line().isBenched()) {
            return BenchedWall.straight(m);
        }
        Worked start = m.section("A0", "at the start", m.start());
        Worked middle = m.middleSection();
        Worked end = m.section("A1", "at the end", m.end());
        return Worked.of(
                "V",
                "straight trench",
                TrenchGeometry.prismoid(m.length().number(), start.number(), middle.number(), end.number()),
                Unit.CUBIC_FOOT,
                new Formula("L ÷ 6 × (A0 + 4 × Am + A1)", "prismoidal rule, exact for a straight grade"),
                m.length(),
                start,
                middle,
                end);
    }

    /**
     * The part of it straight before the wall and its corners, as a trench with an upright bank would be, cubic yards.
     */
    public static Worked beside(Trenches trenches, Wall wall) {
        WallMeasures m = trenches.at(wall);
        double mean = m.meanDepth();
        Worked straight = Worked.of(
                "Vu",
                "upright trench before the wall",
                m.length().number()
                        * (m.projection().number() * mean
                                + m.width().number() * (mean + m.footing().number())),
                Unit.CUBIC_FOOT,
                new Formula("L × (p × (dt0 + dt1) ÷ 2 + B × ((dt0 + dt1) ÷ 2 + tf))", "length times mean section"),
                m.length(),
                m.projection(),
                m.start(),
                m.end(),
                m.width(),
                m.footing());
        List<Term> terms = new ArrayList<>(List.of(new Term(true, straight)));
        for (Corner corner : trenches.cornersOf(wall)) {
            WallMeasures second = trenches.at(corner.second().wall());
            terms.add(new Term(
                    corner.kind() == CornerKind.OUTSIDE,
                    upright("C" + terms.size(), height(trenches, m, second, corner), m, second)));
        }
        trenches.wellsOf(wall)
                .filter(wells -> wells.width() > 0)
                .ifPresent(wells -> terms.add(new Term(true, BodyDug.cubicFeet("Vw", wells))));
        if (m.slope().number() == 0) {
            terms.addAll(shared("U", trenches.soilSharedBy(wall)));
        }
        return sum("W", "soil straight before the wall, bank", terms);
    }

    private static Worked upright(String symbol, Given height, WallMeasures first, WallMeasures second) {
        double block = (first.projection().number() + first.width().number())
                        * (second.projection().number() + second.width().number())
                        * height.number()
                - first.projection().number()
                        * second.projection().number()
                        * Math.min(first.footing().number(), height.number());
        return Worked.of(
                symbol,
                "corner with wall " + second.wall().label() + ", upright",
                block,
                Unit.CUBIC_FOOT,
                new Formula("(p1 + B1) × (p2 + B2) × Hc − p1 × p2 × min(tf, Hc)", "block between two upright trenches"),
                height,
                first.footing(),
                renamed("p1", first.projection()),
                renamed("B1", first.width()),
                renamed("p2", second.projection()),
                renamed("B2", second.width()));
    }

    /** A volume in cubic feet and whether it adds or takes away. */
    public record Term(boolean adds, Worked volume) {}

    /** Volumes added up, as cubic yards. */
    public static Worked sum(String symbol, String name, List<Term> terms) {
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (Term term : terms) {
            String sign = formula.isEmpty() ? "" : term.adds() ? " + " : " − ";
            formula.append(sign).append(term.volume().symbol());
            sum += term.adds() ? term.volume().number() : -term.volume().number();
        }
        String whole = terms.size() == 1 ? formula + " ÷ 27" : "(" + formula + ") ÷ 27";
        return Worked.of(
                symbol,
                name,
                sum / 27,
                Unit.CUBIC_YARD,
                new Formula(whole, "27 cf in a cubic yard"),
                terms.stream().map(Term::volume).toArray(Working[]::new));
    }

    private static List<Term> corners(Trenches trenches, WallMeasures first) {
        List<Term> terms = new ArrayList<>();
        for (Corner corner : trenches.cornersOf(first.wall())) {
            WallMeasures second = trenches.at(corner.second().wall());
            Given height = height(trenches, first, second, corner);
            terms.add(new Term(
                    corner.kind() == CornerKind.OUTSIDE, volume("C" + (terms.size() + 1), height, first, second)));
        }
        return terms;
    }

    private static Given height(Trenches trenches, WallMeasures first, WallMeasures second, Corner corner) {
        double depth = Math.max(
                first.depthAt(corner.first().atEnd()).number(),
                second.depthAt(corner.second().atEnd()).number());
        return Given.of(
                "Hc",
                "depth of the trench at the corner, the deeper of the two",
                depth + first.footing().number(),
                Unit.FOOT,
                trenches.pointer(corner));
    }

    /** The sloped faces at ends where the trench stops in the open. */
    private static List<Term> ends(Trenches trenches, WallMeasures m) {
        List<Term> terms = new ArrayList<>();
        for (WallEnd end : trenches.freeEndsOf(m.wall())) {
            double run = FreeEnds.run(m.wall(), end.atEnd(), m.bank());
            if (run > 0) {
                terms.add(new Term(true, end("E" + (terms.size() + 1), m, end, run)));
            }
        }
        return terms;
    }

    private static Worked end(String symbol, WallMeasures m, WallEnd end, double run) {
        if (m.line().isBenched()) {
            return BenchedWall.end(symbol, m, end);
        }
        Given depth = m.depthAt(end.atEnd());
        Worked height = Worked.of(
                "H",
                "depth of the trench at that end",
                depth.number() + m.footing().number(),
                Unit.FOOT,
                new Formula(depth.symbol() + " + tf", "to the footing's bottom"),
                depth,
                m.footing());
        Given e = Given.of(
                "e",
                "run of the end's face for each rise",
                run,
                Unit.FOOT_PER_FOOT,
                "digging of wall " + m.wall().label() + ", ends");
        return Worked.of(
                symbol,
                "sloped face at the " + (end.atEnd() ? "end" : "start"),
                EndFace.volume(
                        run,
                        m.width().number(),
                        m.slope().number(),
                        m.projection().number(),
                        m.footing().number(),
                        height.number()),
                Unit.CUBIC_FOOT,
                new Formula(
                        "e × (B × H^2 ÷ 2 + s × H^3 ÷ 3 + p × (H^2 − min(tf, H)^2) ÷ 2)",
                        "integral of e × z × (B + s × z), and of e × z × p above the footing, over the height"),
                e,
                m.width(),
                height,
                m.slope(),
                m.projection(),
                m.footing());
    }

    /** What trenches of neighboring walls share beyond their corners, counted with the first of them. */
    public static List<Term> shared(String symbol, List<Overlap> overlaps) {
        List<Term> terms = new ArrayList<>();
        for (Overlap overlap : overlaps) {
            terms.add(new Term(true, shared(symbol + (terms.size() + 1), overlap)));
        }
        return terms;
    }

    private static Worked shared(String symbol, Overlap overlap) {
        List<Working> slices = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        if (overlap.slices().size() > LISTED) {
            formula.append("z");
            slices.add(Listed.of(
                    "z",
                    "all " + overlap.slices().size() + " slices together",
                    overlap.volume(),
                    Unit.CUBIC_FOOT,
                    CUT + ", rule of Gauss with two places in each slice"));
        } else {
            for (Slice slice : overlap.slices()) {
                String each = "z" + (slices.size() + 1);
                slices.add(slice(each, slice));
                formula.append(formula.isEmpty() ? "" : " + ").append(each);
            }
        }
        return Worked.of(
                symbol,
                name(overlap),
                overlap.volume(),
                Unit.CUBIC_FOOT,
                new Formula(formula.toString(), "each place that two trenches share is dug once"),
                slices.toArray(Working[]::new));
    }

    private static String name(Overlap overlap) {
        return switch (overlap.walls().size()) {
            case 0 -> "what the hole for the basin takes already (negative)";
            case 1 -> "what the trench of wall " + overlap.first() + " takes already (negative)";
            default -> "trenches of walls " + String.join(", ", overlap.walls()) + " beyond their corners";
        };
    }

    private static Worked slice(String symbol, Slice slice) {
        return Worked.of(
                symbol,
                "slice",
                slice.volume(),
                Unit.CUBIC_FOOT,
                new Formula("(zb − za) ÷ 2 × (a + b)", "rule of Gauss with two places, exact for a quadratic"),
                Listed.of("za", "slice from, over the bottom", slice.from(), Unit.FOOT, CUT),
                Listed.of("zb", "slice to", slice.to(), Unit.FOOT, CUT),
                Listed.of("a", "area at the lower place", slice.low(), Unit.SQUARE_FOOT, CUT),
                Listed.of("b", "area at the upper place", slice.high(), Unit.SQUARE_FOOT, CUT));
    }

    /** The corner up to a height above the trench's bottom, cubic feet. */
    public static Worked volume(String symbol, Working height, WallMeasures first, WallMeasures second) {
        if (first.line().isBenched() || second.line().isBenched()) {
            return BenchedWall.corner(symbol, height, first, second);
        }
        double value = TrenchGeometry.corner(
                height.number(), first.footing().number(), first.cornerSide(), second.cornerSide());
        String h = height.symbol();
        return Worked.of(
                symbol,
                "corner with wall " + second.wall().label(),
                value,
                Unit.CUBIC_FOOT,
                new Formula(
                        "(p1 + B1) × (p2 + B2) × " + h + " + ((p1 + B1) × s2 + (p2 + B2) × s1) × " + h
                                + "^2 ÷ 2 + s1 × s2 × " + h + "^3 ÷ 3 − p1 × p2 × min(tf, " + h + ")",
                        "integral of the rectangle between two banks over the height"),
                height,
                first.footing(),
                renamed("p1", first.projection()),
                renamed("B1", first.width()),
                renamed("s1", first.slope()),
                renamed("p2", second.projection()),
                renamed("B2", second.width()),
                renamed("s2", second.slope()));
    }

    static Given renamed(String symbol, Working working) {
        return Given.of(symbol, working);
    }
}
