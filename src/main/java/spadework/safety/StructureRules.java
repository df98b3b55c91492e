// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.PRACTICE;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Condition;
import spadework.job.Unseen;
import spadework.job.Wall;
import spadework.job.WallKind;
import spadework.measure.Length;
import spadework.takeoff.wall.BackfillBracing;

/** A wall that an engineer sees before anybody digs, and when it may be filled against again. */
final class StructureRules implements Rule {
    private static final Length BOW_OVER = Length.ofInches(1);
    private static final Length UNBALANCED_OVER = Length.ofFeet(7);

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (Wall wall : facts.job().walls()) {
            found.addAll(engineerFirst(wall));
            found.addAll(unmeasured(wall));
            if (BackfillBracing.isDue(wall)) {
                found.add(must(
                        "backfill-braced",
                        wall.label(),
                        BackfillBracing.CITATION,
                        "depth",
                        wall.deepest().text()));
            }
        }
        return found;
    }

    private static List<Finding> engineerFirst(Wall wall) {
        Condition condition = wall.condition();
        List<Finding> found = new ArrayList<>();
        if (wall.kind() == WallKind.STONE) {
            found.add(stop("engineer-stone", wall.label(), PRACTICE));
        }
        condition
                .bow()
                .filter(bow -> bow.compareTo(BOW_OVER) > 0)
                .ifPresent(bow -> found.add(stop("engineer-bow", wall.label(), PRACTICE, "bow", bow.text())));
        if (condition.horizontalCrack()) {
            found.add(stop("engineer-crack", wall.label(), PRACTICE));
        }
        if (condition.displaced()) {
            found.add(stop("engineer-displaced", wall.label(), PRACTICE));
        }
        if (condition.footingUndermined()) {
            found.add(stop("engineer-undermined", wall.label(), "29 CFR 1926.651(i) (from memory); IBC 1804.1"));
        }
        if (condition.tiedToFloor().equals(Optional.of(false))) {
            found.add(stop("engineer-untied", wall.label(), PRACTICE));
        }
        if (wall.deepest().compareTo(UNBALANCED_OVER) > 0) {
            found.add(stop(
                    "engineer-unbalanced",
                    wall.label(),
                    PRACTICE,
                    "depth",
                    wall.deepest().text()));
        }
        return found;
    }

    private static List<Finding> unmeasured(Wall wall) {
        List<Finding> found = new ArrayList<>();
        if (wall.condition().bow().isEmpty()) {
            found.add(must("bow-unmeasured", wall.label(), PRACTICE));
        }
        for (Unseen unseen : Unseen.values()) {
            if (wall.condition().unseen().contains(unseen)) {
                String id = "unseen-" + unseen.name().toLowerCase(Locale.ROOT).replace('_', '-');
                found.add(must(id, wall.label(), PRACTICE));
            }
        }
        if (wall.condition().tiedToFloor().isEmpty()) {
            found.add(must("tie-unseen", wall.label(), "IRC R404.1.7 (2009 edition on)"));
        }
        return found;
    }
}
