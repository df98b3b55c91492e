// SPDX-License-Identifier: Apache-2.0
package spadework.intake.company;

import spadework.company.LeftoverRule;
import spadework.company.Leftovers;
import spadework.company.PriceRules;
import spadework.company.ProfitBasis;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Choices;
import spadework.intake.value.DollarAmounts;
import spadework.intake.value.Shares;
import spadework.measure.Percent;
import spadework.money.Dollars;

/** Reads how cost becomes price. */
final class PriceRulesReader {
    private static final String BEARS = "jobBears";

    private PriceRulesReader() {}

    static PriceRules priceRules(ObjectFields fields) {
        fields.find("source", Texts.TEXT);
        Percent contingency = fields.get("contingency", Shares.fromZeroTo(100));
        Percent overhead = fields.get("overhead", Shares.fromZeroTo(200));
        ProfitBasis basis = fields.get("basis", Choices.of(ProfitBasis.class));
        return new PriceRules(
                contingency,
                overhead,
                basis,
                fields.get(
                        "profit", basis == ProfitBasis.MARKUP ? Shares.fromZeroTo(500) : Shares.fromZeroToUnder(100)),
                fields.get("minimum", DollarAmounts.FROM_ZERO, Dollars.ZERO),
                fields.get("step", DollarAmounts.ABOVE_ZERO, Dollars.of("1")),
                fields.get("leftovers", ValueKind.object(PriceRulesReader::leftovers), Leftovers.CHARGED));
    }

    private static Leftovers leftovers(ObjectFields fields) {
        LeftoverRule rule = fields.get("rule", Choices.of(LeftoverRule.class));
        SourceNode bears = fields.node().at(BEARS);
        if (rule == LeftoverRule.SHARED) {
            return new Leftovers(rule, fields.get(BEARS, Shares.fromZeroTo(100)));
        }
        fields.find(BEARS, Shares.fromZeroTo(100));
        if (bears.json() != null && fields.node().sheet().isSound(fields.node().pointer() + "/rule")) {
            bears.fault(
                    "a share that \"" + Choices.word(rule) + "\" does not ask for",
                    "\"" + BEARS + "\" only where the rule is \"shared\"",
                    "take it out, or make the rule \"shared\"");
        }
        Percent share = rule == LeftoverRule.CARRIED_TO_STOCK ? Percent.ZERO : Leftovers.CHARGED.jobBears();
        return new Leftovers(rule, share);
    }
}
