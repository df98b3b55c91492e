// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.law.DepositCap;
import spadework.law.HouseLaw;
import spadework.law.StateRules;
import spadework.money.Dollars;

/** The most that may be taken at signing. */
public final class DepositFigure {
    private static final String NAME = "most at signing";

    private DepositFigure() {}

    /**
     * The limit in a state, and the duties that come with a deposit there.
     *
     * @param state two letters
     * @param law the state's rules, where they were gathered
     * @param price the contract price, above 0
     * @param specialOrder cost of special-order material that has to be ordered ahead
     */
    public static Answer of(String state, HouseLaw law, Dollars price, Dollars specialOrder) {
        if (law.state().isEmpty()) {
            return Answer.lawful(
                    List.of(new Amount(NAME, Optional.empty())),
                    List.of(new Applied("US-FTC", "no limit on the deposit", "16 CFR 429.1", "R")),
                    List.of(new Finding("state-unread", Severity.MUST, state, Map.of(), "state home-contract law")));
        }
        StateRules known = law.state().get();
        Optional<Dollars> limit = known.deposit().limit(price, specialOrder);
        List<AnswerValue> values = new ArrayList<>(List.of(new Amount(NAME, limit)));
        String cited = String.join("; ", known.citations());
        List<Finding> found = new ArrayList<>();
        switch (known.deposit().kind()) {
            case TRIGGER_DUTY -> {
                Dollars share = known.deposit().share(price);
                values.add(AnswerValue.of("duties begin above", share));
                found.add(
                        new Finding("deposit-duty-above", Severity.MUST, state, Map.of("share", share.text()), cited));
            }
            case ESCROW -> found.add(new Finding("deposit-escrow", Severity.MUST, state, Map.of(), cited));
            default -> {}
        }
        if (limit.isEmpty()) {
            found.add(new Finding("deposit-no-limit-found", Severity.ADVISE, state, Map.of(), cited));
        }
        if (!known.depositStatus().equals("R")) {
            found.add(new Finding("deposit-unverified", Severity.ADVISE, state, Map.of(), cited));
        }
        String calculation = calculation(known.deposit(), price, specialOrder)
                + limit.map(most -> " = " + most.text()).orElse("");
        return Answer.lawful(values, List.of(new Applied(state, calculation, cited, known.depositStatus())), found);
    }

    private static String calculation(DepositCap cap, Dollars price, Dollars specialOrder) {
        String share = cap.numerator() + "/" + cap.denominator() + " of " + price.text();
        String down = ", rounded down to the cent";
        String rule = switch (cap.kind()) {
            case NONE -> "no limit found";
            case LESSER_OF -> "lesser of " + cap.sum().orElseThrow().text() + " and " + share + down;
            case FRACTION -> share + down;
            case FRACTION_OR_PLUS_SPECIAL_ORDER -> share + down + ", plus special order " + specialOrder.text();
            case GREATER_OF -> "greater of " + share + down + " and special order " + specialOrder.text();
            case TRIGGER_DUTY ->
                "no limit, duties above " + share + " = " + cap.share(price).text();
            case ESCROW -> "no limit, payments before substantial completion are held in trust";
        };
        String scope = cap.from()
                .map(from -> ", where the price is " + from.text() + " or more")
                .orElse("");
        return rule + scope;
    }
}
