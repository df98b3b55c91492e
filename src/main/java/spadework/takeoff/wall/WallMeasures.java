// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.ArrayList;
import java.util.List;
import spadework.ground.Strip;
import spadework.ground.Top;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.trench.Bank;
import spadework.trench.BankLine;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** The measures of one wall, each with its symbol and its place in the job, and what follows from them at once. */
public record WallMeasures(
        Wall wall,
        Bank bank,
        Given length,
        Given start,
        Given end,
        Given footing,
        Given projection,
        Given width,
        Listed slope) {

    public static WallMeasures of(Job job, Wall wall) {
        return of(job, wall, job.indexOfWall(wall.label()));
    }

    /** @param index of the wall in the job */
    public static WallMeasures of(Job job, Wall wall, int index) {
        String at = "/walls/" + index;
        Bank bank = Bank.of(job.site(), wall);
        return new WallMeasures(
                wall,
                bank,
                feet("L", "length of the wall", wall.length().feet(), at + "/length"),
                feet(
                        "dt0",
                        "depth to the footing's top at the start",
                        wall.depthStart().feet(),
                        at + "/depth"),
                feet(
                        "dt1",
                        "depth to the footing's top at the end",
                        wall.depthEnd().feet(),
                        at + "/depth"),
                feet(
                        "tf",
                        "thickness of the footing",
                        wall.footing().thickness().feet(),
                        at + "/footing/thickness"),
                feet(
                        "p",
                        "projection of the footing",
                        wall.footing().projection().feet(),
                        at + "/footing/projection"),
                feet(
                        "B",
                        "width of the trench's bottom",
                        wall.digging().bottomWidth().feet(),
                        at + "/digging/bottomWidth"),
                bank.slope());
    }

    private static Given feet(String symbol, String name, double value, String pointer) {
        return Given.of(symbol, name, value, Unit.FOOT, pointer);
    }

    public double meanDepth() {
        return (start.number() + end.number()) / 2;
    }

    /** The cross-section where the footing's top lies that deep. */
    public Worked section(String symbol, String where, Given depth) {
        return section(symbol, where, depth.number(), depth.symbol(), depth);
    }

    /** The cross-section half-way along. */
    public Worked middleSection() {
        return section("Am", "half-way", meanDepth(), "(dt0 + dt1) ÷ 2", start, end);
    }

    private Worked section(String symbol, String where, double depth, String depthFormula, Given... depths) {
        BankLine line = line();
        double value = TrenchGeometry.section(
                depth, footing.number(), projection.number(), width.number(), line.isBenched() ? 0 : slope.number());
        String d = depths.length == 1 ? depthFormula : "(" + depthFormula + ")";
        String full = "(" + depthFormula + " + tf)";
        Working[] inputs = depths.length == 1
                ? new Working[] {depths[0], footing, projection, width, slope}
                : new Working[] {depths[0], depths[1], footing, projection, width, slope};
        if (line.isBenched()) {
            double height = depth + footing.number();
            List<Working> all = new ArrayList<>(List.of(inputs));
            all.add(BenchedWall.top(this));
            return Worked.of(
                    symbol,
                    "section " + where,
                    value + line.area(height),
                    Unit.SQUARE_FOOT,
                    new Formula(
                            "p × " + d + " + B × " + full + BenchedWall.term(line, height, full),
                            "rectangles from step to step"),
                    all.toArray(Working[]::new));
        }
        return Worked.of(
                symbol,
                "section " + where,
                value,
                Unit.SQUARE_FOOT,
                new Formula("p × " + d + " + B × " + full + " + s × " + full + "^2 ÷ 2", "area of a trapezoid"),
                inputs);
    }

    /** The line of the bank. */
    public BankLine line() {
        return bank.line(wall.deepestTrench());
    }

    public TrenchGeometry.CornerSide cornerSide() {
        return new TrenchGeometry.CornerSide(projection.number(), width.number(), slope.number());
    }

    /** The trench as a strip of ground, up to grade. */
    public Strip strip() {
        return strip(List.of(
                new Top(0, start.number() + footing.number()),
                new Top(length.number(), end.number() + footing.number())));
    }

    /** The strip in front of the wall, up to these tops. */
    public Strip strip(List<Top> tops) {
        return new Strip(wall.label(), projection.number(), width.number(), line(), footing.number(), tops);
    }

    /** Depth to the footing's top at one end. */
    public Given depthAt(boolean atEnd) {
        return atEnd ? end : start;
    }
}
