// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.money.Dollars;

/** Holds a deposit against the rule of the state where the house stands. */
public final class DepositCheck {
    private DepositCheck() {}

    /**
     * What there is to say about a deposit.
     *
     * @param law the state's rules, where they were gathered
     * @param price the whole contract price
     * @param deposit what the schedule takes at signing
     * @param specialOrder cost of special-order material that has to be ordered before the work starts
     */
    public static List<Finding> of(String state, HouseLaw law, Dollars price, Dollars deposit, Dollars specialOrder) {
        List<Finding> found = new ArrayList<>();
        if (law.state().isEmpty()) {
            found.add(finding("state-unread", Severity.MUST, state, "state home-contract law", Map.of()));
            return found;
        }
        StateRules known = law.state().get();
        String cite = String.join("; ", known.citations());
        Optional<Dollars> limit = known.deposit().limit(price, specialOrder);
        Map<String, String> values = new LinkedHashMap<>();
        values.put("deposit", deposit.text());
        values.put("price", price.text());
        if (limit.isPresent() && limit.get().isLessThan(deposit)) {
            values.put("limit", limit.get().text());
            found.add(finding("deposit-over", Severity.STOP, state, cite, values));
        }
        if (known.deposit().kind() == DepositKind.TRIGGER_DUTY
                && known.deposit().share(price).isLessThan(deposit)) {
            values.put("share", known.deposit().share(price).text());
            found.add(finding("deposit-duty", Severity.MUST, state, cite, values));
        }
        if (known.deposit().kind() == DepositKind.ESCROW) {
            found.add(finding("deposit-escrow", Severity.MUST, state, cite, Map.of()));
        }
        if (!known.depositStatus().equals("R")) {
            found.add(finding("deposit-unverified", Severity.ADVISE, state, cite, Map.of()));
        }
        return found;
    }

    private static Finding finding(
            String id, Severity severity, String about, String citation, Map<String, String> values) {
        return new Finding(id, severity, about, values, citation);
    }
}
