// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.util.Comparator;
import java.util.List;
import spadework.finding.Finding;
import spadework.safety.level.DrainAlongRules;
import spadework.safety.level.JoinRules;
import spadework.safety.way.PipeBankRules;
import spadework.safety.way.PipeWayRules;
import spadework.safety.way.WayInRules;

/** All rules, run over a job; gravest first, otherwise in the order of the list. */
public final class Checks {
    private static final List<Rule> RULES = List.of(
            new SoilRules(),
            TrenchDuties::check,
            new BenchRules(),
            new RoomRules(),
            new GroundRules(),
            new StructureRules(),
            new EnvelopeRules(),
            new UtilityRules(),
            new TreeRules(),
            new HazardRules(),
            facts -> WayInRules.check(facts.job()),
            new FallRules(),
            new DepthRules(),
            facts -> DrainAlongRules.check(facts.job(), facts.book()),
            new CornerRules(),
            facts -> JoinRules.check(facts.job()),
            new CoverRules(),
            new LoadRules(),
            new OutletRules(),
            new SumpRules(),
            facts -> PipeWayRules.check(facts.job()),
            facts -> PipeBankRules.check(facts.job()),
            new ChoiceRules(),
            new FinishRules(),
            new BookRules());

    private Checks() {}

    public static List<Finding> of(Facts facts) {
        return RULES.stream()
                .flatMap(rule -> rule.check(facts).stream())
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }
}
