// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.safety.SoilClass;
import spadework.safety.TrenchDuties;
import spadework.takeoff.wall.TrenchGeometry;
import spadework.trench.Bank;
import spadework.trench.SlopeTable;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** The soil that a trench at a wall is, its top width, and what the law asks of its bank. */
public final class TrenchFigure {
    private static final String ABOUT = "as figured";

    private final TrenchInputs in;
    private final Given length;
    private final Given start;
    private final Given end;
    private final Given footing;
    private final Given projection;
    private final Given width;
    private final Listed slope;

    private TrenchFigure(TrenchInputs in) {
        this.in = in;
        this.length = feet("L", "length of the trench", in.length());
        this.start = feet("dt0", "depth to the footing's top at the start", in.depthStart());
        this.end = feet("dt1", "depth to the footing's top at the end", in.depthEnd());
        this.footing = feet("tf", "thickness of the footing", in.footing());
        this.projection = feet("p", "projection of the footing", in.projection());
        this.width = feet("B", "width of the trench's bottom", in.bottom());
        this.slope = in.bank().slope();
    }

    /**
     * Bank volume, top width, set-back, lawful slope and the duties of the trench. It never says that one is safe.
     *
     * @throws WrongInputs if the inside corners take away more than there is
     */
    public static Answer of(TrenchInputs in) throws WrongInputs {
        TrenchFigure figure = new TrenchFigure(in);
        Worked bank = figure.bank();
        if (bank.number() <= 0) {
            throw new WrongInputs(
                    "inside corners that take away the whole trench",
                    "corners that the length has room for",
                    "make --length longer, or --corners-in fewer");
        }
        List<Working> found = new ArrayList<>(List.of(bank, figure.top(), figure.setBack()));
        found.add(Listed.of(
                "Hp",
                "protection is required from, at the latest",
                Bank.PROTECTED_FROM.feet(),
                Unit.FOOT,
                "29 CFR 1926.652(a)(1); from less where the competent person sees a sign of falling in"));
        if (!in.isEngineered()) {
            found.add(Listed.of(
                    "sl",
                    "lawful slope, run for each foot of rise",
                    SlopeTable.run(in.bank().soil()),
                    Unit.FOOT_PER_FOOT,
                    SlopeTable.SOURCE));
        }
        return Answer.of(found).with(findings(in));
    }

    private static List<Finding> findings(TrenchInputs in) {
        List<Finding> found = new ArrayList<>(in.named().map(SoilClass::beside).orElse(List.of()));
        found.add(in.named().map(SoilClass::confirm).orElseGet(SoilClass::unnamed));
        found.add(SoilClass.seepageUnknown());
        found.addAll(TrenchDuties.at(ABOUT, in.deepest(), in.bank()));
        found.addAll(TrenchDuties.everywhere("yours"));
        return found;
    }

    private static Given feet(String symbol, String name, Length value) {
        return Inputs.given(symbol, name, value.feet(), Unit.FOOT);
    }

    private Worked bank() {
        Worked straight = straight();
        if (in.cornersOut() == 0 && in.cornersIn() == 0) {
            return Worked.of(
                    "D",
                    "soil dug, bank",
                    straight.number() / 27,
                    Unit.CUBIC_YARD,
                    new Formula("V ÷ 27", "27 cf in a cubic yard"),
                    straight);
        }
        Worked corner = corner();
        Given out = Inputs.given("co", "outside corners", in.cornersOut(), Unit.EACH);
        Given inside = Inputs.given("ci", "inside corners", in.cornersIn(), Unit.EACH);
        double volume = straight.number() + (in.cornersOut() - in.cornersIn()) * corner.number();
        return Worked.of(
                "D",
                "soil dug, bank",
                volume / 27,
                Unit.CUBIC_YARD,
                new Formula("(V + co × Vc − ci × Vc) ÷ 27", "27 cf in a cubic yard"),
                straight,
                out,
                inside,
                corner);
    }

    private Worked straight() {
        Worked first = section("A0", "section at the start", "dt0", start);
        if (start.number() == end.number()) {
            return Worked.of(
                    "V",
                    "straight trench",
                    TrenchGeometry.prismoid(length.number(), first.number(), first.number(), first.number()),
                    Unit.CUBIC_FOOT,
                    new Formula("L × A0", "length times section"),
                    length,
                    first);
        }
        Worked middle = section("Am", "section half-way", "(dt0 + dt1) ÷ 2", start, end);
        Worked last = section("A1", "section at the end", "dt1", end);
        return Worked.of(
                "V",
                "straight trench",
                TrenchGeometry.prismoid(length.number(), first.number(), middle.number(), last.number()),
                Unit.CUBIC_FOOT,
                new Formula("L ÷ 6 × (A0 + 4 × Am + A1)", "prismoidal rule, exact for a straight grade"),
                length,
                first,
                middle,
                last);
    }

    private Worked section(String symbol, String name, String depth, Given... depths) {
        double mean = (depths[0].number() + depths[depths.length - 1].number()) / 2;
        double value =
                TrenchGeometry.section(mean, footing.number(), projection.number(), width.number(), slope.number());
        String d = depths.length == 1 ? depth : "(" + depth + ")";
        String full = "(" + depth + " + tf)";
        List<Working> inputs = new ArrayList<>(List.of(depths));
        inputs.addAll(List.of(footing, projection, width, slope));
        return Worked.of(
                symbol,
                name,
                value,
                Unit.SQUARE_FOOT,
                new Formula("p × " + d + " + B × " + full + " + s × " + full + "^2 ÷ 2", "area of a trapezoid"),
                inputs.toArray(Working[]::new));
    }

    private Worked corner() {
        TrenchGeometry.CornerSide side =
                new TrenchGeometry.CornerSide(projection.number(), width.number(), slope.number());
        Worked depth = depth();
        return Worked.of(
                "Vc",
                "one corner",
                TrenchGeometry.corner(depth.number(), footing.number(), side, side),
                Unit.CUBIC_FOOT,
                new Formula(
                        "(p + B)^2 × H + (p + B) × s × H^2 + s^2 × H^3 ÷ 3 − p^2 × tf",
                        "integral of the square between two banks over the height"),
                depth,
                footing,
                projection,
                width,
                slope);
    }

    private Worked depth() {
        return Worked.of(
                "H",
                "depth to the trench's bottom, deeper end",
                in.deepest().feet(),
                Unit.FOOT,
                new Formula("max(dt0, dt1) + tf", "the trench ends at the footing's bottom"),
                start,
                end,
                footing);
    }

    private Worked top() {
        Worked depth = depth();
        double value = Bank.reach(in.projection(), in.bottom(), slope.number(), in.deepest())
                .feet();
        return Worked.of(
                "W",
                "top width from the wall, deeper end",
                value,
                Unit.FOOT,
                new Formula("p + B + s × H", "width of the bottom and what the bank is laid back"),
                projection,
                width,
                slope,
                depth);
    }

    private Worked setBack() {
        Worked depth = depth();
        return Worked.of(
                "w",
                "top edge lies back from the toe",
                slope.number() * depth.number(),
                Unit.FOOT,
                new Formula("s × H", SlopeTable.SOURCE),
                slope,
                depth);
    }
}
