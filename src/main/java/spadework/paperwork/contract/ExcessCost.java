// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import java.util.Map;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.ChangeState;
import spadework.law.HouseLaw;
import spadework.law.RequiredContent;
import spadework.law.StateRules;
import spadework.money.Dollars;

/** Change orders that together cost more than a state's law lets go without a notice of its own. */
final class ExcessCost {
    private ExcessCost() {}

    /**
     * A finding for each limit that the changes pass, signed or only drafted; declined ones do not count. A contract
     * that only its changes carry to where the law begins is taken for one that the law reaches: whether it does is
     * for an attorney, and silence would pass for an answer.
     */
    static List<Finding> of(String state, HouseLaw law, Contract contract) {
        Dollars price = contract.contracted().total();
        Dollars extra = contract.changes().stream()
                .filter(change -> change.change().state() != ChangeState.DECLINED)
                .map(PricedChange::agreed)
                .map(sum -> sum.total())
                .filter(added -> Dollars.ZERO.isLessThan(added))
                .reduce(Dollars.ZERO, Dollars::plus);
        return law.state().filter(rules -> rules.reaches(price.plus(extra))).stream()
                .flatMap(rules -> rules.contents().stream()
                        .filter(content -> content.changesOver()
                                .filter(limit -> limit.isLessThan(extra))
                                .isPresent())
                        .map(content -> finding(state, rules, content, extra)))
                .toList();
    }

    private static Finding finding(String state, StateRules rules, RequiredContent content, Dollars extra) {
        return new Finding(
                "excess-cost",
                Severity.MUST,
                state,
                Map.of(
                        "law",
                        rules.state(),
                        "extra",
                        extra.text(),
                        "limit",
                        content.changesOver().orElseThrow().text()),
                String.join("; ", rules.citations()));
    }
}
