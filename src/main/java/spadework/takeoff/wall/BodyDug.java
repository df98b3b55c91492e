// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.ArrayList;
import java.util.List;
import spadework.ground.BodyStation;
import spadework.ground.DepthFrom;
import spadework.ground.DigBody;
import spadework.measure.Unit;
import spadework.trench.BankLine;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Soil of a body that is no wall's trench: of a pipe trench, of a hole. */
public final class BodyDug {
    private BodyDug() {}

    /** Bank volume in cubic yards, from station to station. */
    public static Worked of(String symbol, String name, DigBody body) {
        List<Working> pieces = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (int i = 1; i < body.stations().size(); i++) {
            Worked piece = piece(
                    "T" + i, body, body.stations().get(i - 1), body.stations().get(i));
            pieces.add(piece);
            formula.append(formula.isEmpty() ? "" : " + ").append(piece.symbol());
            sum += piece.number();
        }
        return Worked.of(
                symbol,
                name + ", " + source(body),
                sum / 27,
                Unit.CUBIC_YARD,
                new Formula(pieces.size() == 1 ? formula + " ÷ 27" : "(" + formula + ") ÷ 27", "27 cf in a cubic yard"),
                pieces.toArray(Working[]::new));
    }

    /** Cubic feet of one body: of a wall's wells, that are counted with it. */
    public static Worked cubicFeet(String symbol, DigBody body) {
        return piece(
                symbol,
                body,
                body.stations().get(0),
                body.stations().get(body.stations().size() - 1));
    }

    private static Worked piece(String symbol, DigBody body, BodyStation from, BodyStation to) {
        String at = source(body);
        Given length = Given.of("L", "length", to.at() - from.at(), Unit.FOOT, body.label());
        Given width = Given.of("b", "width of the bottom", body.width(), Unit.FOOT, body.label());
        Given start = Given.of("h0", "depth at its start", from.depth(), Unit.FOOT, at);
        Given end = Given.of("h1", "depth at its end", to.depth(), Unit.FOOT, at);
        double slope = body.slopeAt((from.depth() + to.depth()) / 2);
        if (slope == 0) {
            return Worked.of(
                    symbol,
                    "upright trench",
                    length.number() * width.number() * (start.number() + end.number()) / 2,
                    Unit.CUBIC_FOOT,
                    new Formula("L × b × (h0 + h1) ÷ 2", "length times width times mean depth"),
                    length,
                    width,
                    start,
                    end);
        }
        Listed s = Listed.of(
                "s",
                "side slope, run for each rise",
                slope,
                Unit.FOOT_PER_FOOT,
                body.bank().slope().source());
        if (body.line().isBenched()) {
            return benched(symbol, body, List.of(length, width, start, end), s);
        }
        double mean = (start.number() + end.number()) / 2;
        return Worked.of(
                symbol,
                "trench laid back on both sides",
                TrenchGeometry.prismoid(
                        length.number(),
                        section(width, start.number(), slope),
                        section(width, mean, slope),
                        section(width, end.number(), slope)),
                Unit.CUBIC_FOOT,
                new Formula(
                        "L ÷ 6 × (b × h0 + s × h0^2 + 4 × (b × (h0 + h1) ÷ 2 + s × ((h0 + h1) ÷ 2)^2) + b × h1 "
                                + "+ s × h1^2)",
                        "prismoidal rule, exact for a straight grade"),
                length,
                width,
                start,
                end,
                s);
    }

    /** Between two stations a section with steps grows evenly. */
    private static Worked benched(String symbol, DigBody body, List<Given> measures, Listed slope) {
        double length = measures.get(0).number();
        double width = measures.get(1).number();
        double h0 = measures.get(2).number();
        double h1 = measures.get(3).number();
        BankLine line = body.line();
        double most = Math.max(h0, h1);
        List<Working> inputs = new ArrayList<>(measures);
        inputs.add(slope);
        inputs.add(Given.of("Ht", "depth at the deepest place", line.top(), Unit.FOOT, source(body)));
        return Worked.of(
                symbol,
                "trench with steps on both sides",
                length * ((width * h0 + 2 * line.area(h0)) + (width * h1 + 2 * line.area(h1))) / 2,
                Unit.CUBIC_FOOT,
                new Formula(
                        "L × (b × (h0 + h1)" + twice(line, most, "h0") + twice(line, most, "h1") + ") ÷ 2",
                        "length times mean section"),
                inputs.toArray(Working[]::new));
    }

    private static String twice(BankLine line, double height, String symbol) {
        return BenchedWall.term(line, height, symbol).replace(" + s × (", " + 2 × s × (");
    }

    private static double section(Given width, double depth, double slope) {
        return width.number() * depth + slope * depth * depth;
    }

    /** Where the depth comes from. */
    public static String source(DigBody body) {
        DepthFrom from = body.depthFrom();
        return switch (from) {
            case MEASURED -> "depth as measured";
            case TYPED -> "typed depth, no level says whether it is right";
            case USUAL -> "usual depth, nobody measured it";
        };
    }
}
