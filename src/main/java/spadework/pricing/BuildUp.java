// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.util.ArrayList;
import java.util.List;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.money.ExactDollars;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** The whole job from direct cost to the printed price, step by step, each with its formula. */
final class BuildUp {
    private static final String COMPANY = "company's price rules";

    private BuildUp() {}

    static List<Worked> of(PriceRules rules, List<PricedLine> lines, Dollars price) {
        ExactDollars direct = ExactDollars.total(
                lines.stream().map(line -> line.cost().direct().exact()).toList());
        Listed d = new Listed("D", "direct cost", direct.amount(), Unit.DOLLAR, "sum of the lines");
        Listed c = new Listed("c", "contingency", rules.contingency().fraction(), Unit.NONE, COMPANY);
        Listed o = new Listed("o", "overhead", rules.overhead().fraction(), Unit.NONE, COMPANY);
        Listed m = new Listed("m", profitName(rules), rules.profit().fraction(), Unit.NONE, COMPANY);
        Worked withContingency =
                step("K", "with contingency", Selling.withContingency(rules, direct), "D × (1 + c)", d, c);
        Worked withOverhead =
                step("O", "with overhead", Selling.withOverhead(rules, direct), "K × (1 + o)", withContingency, o);
        boolean margin = rules.basis() == ProfitBasis.MARGIN;
        Worked exact = step(
                "E",
                "price before rounding",
                Selling.price(rules, direct),
                margin ? "O ÷ (1 − m)" : "O × (1 + m)",
                withOverhead,
                m);
        Listed printed = new Listed("Q", "price as printed", price.amount(), Unit.DOLLAR, "sum of the sections");
        Worked rounding = step(
                "R",
                "unit prices, sections and minimum rounded",
                price.exact().minus(ExactDollars.of(exact.value())),
                "Q − E",
                printed,
                exact);
        List<Worked> steps = new ArrayList<>();
        steps.add(step(
                "D",
                "direct cost",
                direct,
                "sum",
                new Listed("sum", "direct cost of all lines", direct.amount(), Unit.DOLLAR, "lines")));
        steps.addAll(List.of(withContingency, withOverhead, exact, rounding));
        return steps;
    }

    private static String profitName(PriceRules rules) {
        return rules.basis() == ProfitBasis.MARGIN ? "margin" : "markup";
    }

    private static Worked step(String symbol, String name, ExactDollars value, String formula, Working... inputs) {
        return Worked.of(symbol, name, value.amount(), Unit.DOLLAR, new Formula(formula, COMPANY), inputs);
    }
}
