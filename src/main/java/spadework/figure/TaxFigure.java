// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.List;
import java.util.Map;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.pricing.SalesTax;

/** Sales tax on an amount. */
public final class TaxFigure {
    private static final String SOURCE =
            "Streamlined Sales and Use Tax Agreement s. 324, as in R.I. Gen. Laws 44-18.1-25";

    private TaxFigure() {}

    /**
     * The tax, and the amount with it.
     *
     * @param amount what is taxed, above 0: one item or a whole invoice
     * @param rate state and local rate together
     */
    public static Answer of(Dollars amount, Percent rate) {
        Dollars tax = SalesTax.on(amount, rate);
        String calculation = amount.text() + " × " + rate.text() + " = "
                + amount.amount().multiply(rate.fraction()).stripTrailingZeros().toPlainString()
                + ", rounded once, up from half a cent";
        return Answer.lawful(
                List.of(AnswerValue.of("sales tax", tax), AnswerValue.of("amount with tax", amount.plus(tax))),
                List.of(Applied.money("tax", calculation, tax, SOURCE, "R")),
                List.of(new Finding("tax-mode", Severity.MUST, "", Map.of(), "state sales tax law")));
    }
}
