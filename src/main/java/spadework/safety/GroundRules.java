// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.ground.BodyKind;
import spadework.ground.DepthFrom;
import spadework.ground.DigBody;
import spadework.ground.FreeEnds;
import spadework.ground.SumpHole;
import spadework.job.Access;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Wall;
import spadework.job.WallEnd;
import spadework.measure.Length;
import spadework.pricebook.Measure;
import spadework.takeoff.HandItems;
import spadework.trench.Bank;

/** Whether what is dug is known well enough: depths against levels, ends of trenches, holes beside a footing. */
final class GroundRules implements Rule {
    /** A typed depth may lie so far off the levels before somebody has to look. */
    private static final double SLACK_FEET = 0.5;

    private static final String UNDERMINING = "29 CFR 1926.651(i) (from memory); IBC 1804.1";

    @Override
    public List<Finding> check(Facts facts) {
        Job job = facts.job();
        List<DigBody> bodies = facts.bodies();
        List<Finding> found = new ArrayList<>();
        bodies.forEach(body -> differs(body).ifPresent(found::add));
        found.addAll(unmeasured(bodies, DepthFrom.TYPED, "trench-depth-typed"));
        found.addAll(unmeasured(bodies, DepthFrom.USUAL, "trench-depth-usual"));
        found.addAll(ends(job));
        found.addAll(byHand(facts));
        for (Outlet outlet : job.water().outlets()) {
            if (outlet.kind() == OutletKind.SUMP) {
                hole(SumpHole.of(job, outlet)).ifPresent(found::add);
            }
        }
        return found;
    }

    private static Optional<Finding> differs(DigBody body) {
        if (body.typed().isEmpty()) {
            return Optional.empty();
        }
        Length typed = body.typed().get();
        Length levels = body.meanDepth();
        boolean off = Math.abs(typed.feet() - levels.feet()) > SLACK_FEET + 1e-6;
        return off
                ? Optional.of(must(
                        "trench-depth-differs",
                        body.label(),
                        Found.PRACTICE,
                        "typed",
                        typed.text(),
                        "levels",
                        levels.text(),
                        "at",
                        BodyNames.joined(List.of(BodyNames.of(body)))))
                : Optional.empty();
    }

    private static List<Finding> unmeasured(List<DigBody> bodies, DepthFrom from, String id) {
        List<DigBody> some = bodies.stream()
                .filter(body -> body.kind() != BodyKind.WINDOW_WELL && body.depthFrom() == from)
                .toList();
        List<BodyNames> names = some.stream().map(BodyNames::of).toList();
        return some.isEmpty()
                ? List.of()
                : List.of(advise(
                        id,
                        BodyNames.labels(names),
                        Found.PRACTICE,
                        "at",
                        BodyNames.joined(names),
                        "depth",
                        BodyNames.range(some.stream().map(DigBody::deepest).toList())));
    }

    /** Ends in the open, which are laid back like the bank, and ends of which nobody knows. */
    private static List<Finding> ends(Job job) {
        FreeEnds free = new FreeEnds(job);
        List<String> open = new ArrayList<>();
        List<String> openWalls = new ArrayList<>();
        List<Finding> found = new ArrayList<>();
        for (Wall wall : job.walls()) {
            Bank bank = Bank.of(job.site(), wall);
            for (WallEnd end : free.of(wall)) {
                EndKind kind = wall.digging().ends().at(end.atEnd());
                boolean ramp =
                        kind == EndKind.RAMP && wall.digging().ends().rampRun().isEmpty();
                if (kind == EndKind.UNKNOWN || ramp) {
                    found.add(must(
                            ramp ? "ramp-unmeasured" : "end-unknown",
                            wall.label(),
                            Found.PRACTICE,
                            "where",
                            where(end)));
                } else if (kind == EndKind.OPEN && FreeEnds.run(wall, end.atEnd(), bank) > 0) {
                    open.add(wall.label() + " " + where(end));
                    openWalls.add(wall.label());
                }
            }
        }
        if (!open.isEmpty()) {
            found.add(advise(
                    "ends-open",
                    String.join(", ", openWalls.stream().distinct().toList()),
                    "29 CFR 1926 Subpart P App. B",
                    "ends",
                    String.join(", ", open)));
        }
        return found;
    }

    private static String where(WallEnd end) {
        return end.atEnd() ? "end" : "start";
    }

    /** Walls that only hand tools reach, where the book moves soil or stone by machine alone. */
    private static List<Finding> byHand(Facts facts) {
        List<String> walls = facts.job().walls().stream()
                .filter(wall -> wall.digging().access() == Access.HAND)
                .map(Wall::label)
                .toList();
        List<Measure> missing = walls.isEmpty() ? List.of() : HandItems.missing(facts.book());
        return missing.isEmpty()
                ? List.of()
                : List.of(must(
                        "hand-item-missing",
                        String.join(", ", walls),
                        Found.PRACTICE,
                        "what",
                        String.join(
                                " and ", missing.stream().map(Measure::trade).toList())));
    }

    /**
     * A hole that is deeper than the footing beside it may take the ground from under it. Beside it is what lies no
     * farther off than the hole is deep: a bank that falls in at 1 to 1 reaches that far. So it goes beyond the line of
     * 1 to 1 from the footing's bottom.
     */
    private static Optional<Finding> hole(SumpHole hole) {
        String label = hole.body().label();
        String depth = hole.body().deepest().text();
        if (hole.below().isEmpty()) {
            return Optional.of(must("pit-level-unknown", label, UNDERMINING, "depth", depth));
        }
        double below = hole.below().get();
        double deep = hole.body().deepest().feet();
        boolean clear =
                hole.fromFooting().map(away -> away.feet() >= deep - 1e-6).orElse(false);
        if (below <= 1e-6) {
            return Optional.empty();
        }
        if (clear) {
            return Optional.of(must(
                    "pit-beside-footing",
                    label,
                    UNDERMINING,
                    "depth",
                    depth,
                    "below",
                    Amounts.feet(below),
                    "away",
                    hole.fromFooting().orElseThrow().text()));
        }
        return Optional.of(stop(
                "pit-below-footing",
                label,
                UNDERMINING,
                "depth",
                depth,
                "below",
                Amounts.feet(below),
                "away",
                hole.fromFooting().map(Length::text).orElse("an unknown distance")));
    }
}
