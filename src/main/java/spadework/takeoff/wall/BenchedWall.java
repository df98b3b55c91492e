// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import spadework.ground.FreeEnds;
import spadework.job.EndKind;
import spadework.job.WallEnd;
import spadework.measure.Unit;
import spadework.trench.BankLine;
import spadework.trench.Benching;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Soil beside a wall whose bank is cut in steps, step by step. The steps lie level, counted from the bottom. */
public final class BenchedWall {
    private BenchedWall() {}

    /** What the steps add to an upright section that high, as a term of a formula; empty under the first step. */
    public static String term(BankLine line, double height, String symbol) {
        StringBuilder term = new StringBuilder();
        for (double from : line.steps()) {
            if (from < height) {
                term.append(term.isEmpty() ? "" : " + ")
                        .append("max(min(")
                        .append(feet(from + line.rise()))
                        .append(", ")
                        .append(symbol)
                        .append(") − ")
                        .append(feet(from))
                        .append(", 0) × min(")
                        .append(feet(from + line.rise()))
                        .append(", Ht)");
            }
        }
        return term.isEmpty() ? "" : " + s × (" + term + ")";
    }

    private static String feet(double whole) {
        return Long.toString(Math.round(whole));
    }

    /** The depth up to which the last step reaches. */
    public static Given top(WallMeasures m) {
        return Given.of(
                "Ht",
                "depth of the trench at its deepest place",
                m.line().top(),
                Unit.FOOT,
                "depth of wall " + m.wall().label());
    }

    /** The straight trench, from one place at which a step begins or ends to the next. */
    static Worked straight(WallMeasures m) {
        double h0 = m.start().number() + m.footing().number();
        double h1 = m.end().number() + m.footing().number();
        TreeSet<Double> at = new TreeSet<>(List.of(0.0, m.length().number()));
        for (double step : m.line().steps()) {
            if ((h0 - step) * (h1 - step) < 0) {
                at.add(m.length().number() * (step - h0) / (h1 - h0));
            }
        }
        List<Worked> pieces = new ArrayList<>();
        double from = 0;
        for (double to : at.tailSet(0.0, false)) {
            pieces.add(stretch("V" + (pieces.size() + 1), m, from, to));
            from = to;
        }
        return sum("V", "straight trench with its steps", pieces);
    }

    private static Worked stretch(String symbol, WallMeasures m, double from, double to) {
        Given length = Given.of("Lk", "from step to step", to - from, Unit.FOOT, "length of the wall");
        Worked a = m.section("A0", "at its start", depth("dt0", m, from));
        Worked b = m.section("A1", "at its end", depth("dt1", m, to));
        return Worked.of(
                symbol,
                "stretch of the trench",
                length.number() * (a.number() + b.number()) / 2,
                Unit.CUBIC_FOOT,
                new Formula("Lk × (A0 + A1) ÷ 2", "exact where the section grows evenly"),
                length,
                a,
                b);
    }

    private static Given depth(String symbol, WallMeasures m, double at) {
        double share = at / m.length().number();
        double depth = m.start().number() + (m.end().number() - m.start().number()) * share;
        return Given.of(symbol, "depth to the footing's top there", depth, Unit.FOOT, "straight between the ends");
    }

    /** The face of a free end: in steps like the bank, or even where it is a ramp. */
    static Worked end(String symbol, WallMeasures m, WallEnd end) {
        EndKind kind = m.wall().digging().ends().at(end.atEnd());
        double height = m.depthAt(end.atEnd()).number() + m.footing().number();
        boolean ramp = kind == EndKind.RAMP;
        double run = FreeEnds.run(m.wall(), end.atEnd(), m.bank());
        List<Worked> pieces = new ArrayList<>();
        for (double[] step : pieces(height, m.line())) {
            String each = symbol + "k" + (pieces.size() + 1);
            pieces.add(ramp ? ramp(each, m, run, step) : face(each, m, step));
        }
        return sum(symbol, (ramp ? "ramp at the " : "face in steps at the ") + (end.atEnd() ? "end" : "start"), pieces);
    }

    private static Worked face(String symbol, WallMeasures m, double[] step) {
        Listed from = height("za", step[0]);
        Listed to = height("zb", step[1]);
        Listed out = out("o", m.line(), step);
        double p = m.projection().number();
        double over = Math.max(step[1], m.footing().number())
                - Math.max(step[0], m.footing().number());
        return Worked.of(
                symbol,
                "step of the face",
                out.number() * ((step[1] - step[0]) * (m.width().number() + out.number()) + p * over),
                Unit.CUBIC_FOOT,
                new Formula(
                        "o × ((zb − za) × (B + o) + p × (max(zb, tf) − max(za, tf)))",
                        "height times what the step takes on both sides"),
                out,
                to,
                from,
                m.width(),
                m.projection(),
                m.footing());
    }

    private static Worked ramp(String symbol, WallMeasures m, double run, double[] step) {
        Listed from = height("za", step[0]);
        Listed to = height("zb", step[1]);
        Listed out = out("o", m.line(), step);
        Given e = Given.of(
                "e",
                "run of the ramp for each rise",
                run,
                Unit.FOOT_PER_FOOT,
                "digging of wall " + m.wall().label() + ", ends");
        double tf = m.footing().number();
        double squares = step[1] * step[1] - step[0] * step[0];
        double over = Math.max(step[1], tf) * Math.max(step[1], tf) - Math.max(step[0], tf) * Math.max(step[0], tf);
        return Worked.of(
                symbol,
                "ramp beside a step",
                run
                        * ((m.width().number() + out.number()) * squares
                                + m.projection().number() * over)
                        / 2,
                Unit.CUBIC_FOOT,
                new Formula(
                        "e × ((B + o) × (zb^2 − za^2) + p × (max(zb, tf)^2 − max(za, tf)^2)) ÷ 2",
                        "integral of e × z × (B + o), and of e × z × p above the footing, over the step"),
                e,
                m.width(),
                out,
                to,
                from,
                m.projection(),
                m.footing());
    }

    /** The corner of two trenches, one of which at least has steps. */
    static Worked corner(String symbol, Working height, WallMeasures first, WallMeasures second) {
        List<Worked> pieces = new ArrayList<>();
        for (double[] step : pieces(height.number(), first.line(), second.line())) {
            pieces.add(block(symbol + "k" + (pieces.size() + 1), first, second, step));
        }
        double sum = pieces.stream().mapToDouble(Worked::number).sum();
        double standing = first.projection().number()
                * second.projection().number()
                * Math.min(first.footing().number(), height.number());
        List<Working> inputs = new ArrayList<>(pieces);
        inputs.addAll(List.of(
                DugWall.renamed("p1", first.projection()),
                DugWall.renamed("p2", second.projection()),
                first.footing(),
                height));
        return Worked.of(
                symbol,
                "corner with wall " + second.wall().label(),
                sum - standing,
                Unit.CUBIC_FOOT,
                new Formula(
                        added(pieces) + " − p1 × p2 × min(tf, " + height.symbol() + ")",
                        "rectangle between two banks, step by step, less the footing's corner"),
                inputs.toArray(Working[]::new));
    }

    private static Worked block(String symbol, WallMeasures first, WallMeasures second, double[] step) {
        Listed from = height("za", step[0]);
        Listed to = height("zb", step[1]);
        Listed one = out("o1", first.line(), step);
        Listed other = out("o2", second.line(), step);
        return Worked.of(
                symbol,
                "between two heights",
                (step[1] - step[0])
                        * (first.projection().number() + first.width().number() + one.number())
                        * (second.projection().number() + second.width().number() + other.number()),
                Unit.CUBIC_FOOT,
                new Formula(
                        "(zb − za) × (p1 + B1 + o1) × (p2 + B2 + o2)", "exact, for one bank at least stands upright"),
                to,
                from,
                DugWall.renamed("p1", first.projection()),
                DugWall.renamed("B1", first.width()),
                one,
                DugWall.renamed("p2", second.projection()),
                DugWall.renamed("B2", second.width()),
                other);
    }

    /** From the bottom up to a height, cut where a step of one of these begins. */
    private static List<double[]> pieces(double height, BankLine... lines) {
        TreeSet<Double> faces = new TreeSet<>();
        for (BankLine line : lines) {
            line.steps().stream().filter(step -> step < height).forEach(faces::add);
        }
        faces.add(height);
        List<double[]> pieces = new ArrayList<>();
        double from = 0;
        for (double to : faces) {
            pieces.add(new double[] {from, to});
            from = to;
        }
        return pieces;
    }

    private static Listed height(String symbol, double feet) {
        return Listed.of(symbol, "height over the bottom", feet, Unit.FOOT, Benching.SOURCE);
    }

    /** How far the bank stands out between two heights; of a sloped one half-way. */
    private static Listed out(String symbol, BankLine line, double[] step) {
        return Listed.of(
                symbol,
                "how far the bank stands out there",
                line.out((step[0] + step[1]) / 2),
                Unit.FOOT,
                line.isBenched() ? Benching.SOURCE : "half-way up");
    }

    private static Worked sum(String symbol, String name, List<Worked> pieces) {
        return Worked.of(
                symbol,
                name,
                pieces.stream().mapToDouble(Worked::number).sum(),
                Unit.CUBIC_FOOT,
                new Formula(added(pieces), "step by step"),
                pieces.toArray(Working[]::new));
    }

    private static String added(List<Worked> pieces) {
        return String.join(" + ", pieces.stream().map(Worked::symbol).toList());
    }
}
