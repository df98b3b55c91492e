// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.OutletKind;
import spadework.water.LeastSlope;
import spadework.water.OutletChoice;
import spadework.water.OutletChoice.Considered;

/** Daylight or sump: what was looked at, and why it works or does not. */
final class ChoiceRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        boolean sump = facts.job().water().outlets().stream()
                .anyMatch(outlet -> outlet.kind() == OutletKind.SUMP
                        && !facts.network().into(outlet.label()).isEmpty());
        List<Finding> found = new ArrayList<>();
        if (sump && facts.job().water().candidates().isEmpty()) {
            found.add(must("candidates-none", "", Found.PRACTICE));
        }
        OutletChoice choice = OutletChoice.of(facts.job(), facts.book(), facts.network());
        for (Considered considered : choice.considered()) {
            found.add(described(considered, sump));
        }
        return found;
    }

    private static Finding described(Considered considered, boolean sump) {
        String[] values = {
            "what", considered.candidate().what(),
            "level", considered.candidate().level().levelText(),
            "distance", considered.candidate().distance().text(),
            "available", Amounts.feet(Math.abs(considered.available().number())),
            "needed", Amounts.feet(considered.needed().number()),
            "permission", considered.candidate().permission().orElse("no permission named")
        };
        String label = considered.candidate().label();
        if (considered.falls() && sump) {
            return advise("candidate-spares-pump", label, LeastSlope.SOLID_SOURCE, values);
        }
        if (considered.available().number() < 0) {
            return advise("candidate-higher", label, LeastSlope.SOLID_SOURCE, values);
        }
        return considered.falls()
                ? advise("candidate-falls", label, LeastSlope.SOLID_SOURCE, values)
                : advise("candidate-too-high", label, LeastSlope.SOLID_SOURCE, values);
    }
}
