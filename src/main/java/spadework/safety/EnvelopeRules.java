package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.FootingDrain;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.takeoff.StoneHeight;

/** The stone around the drain and the openings below grade. */
final class EnvelopeRules implements Rule {
    /** Soil over the fabric, so that grass grows and surface water stays out; common practice, no source. */
    private static final Length SOIL_OVER_STONE = Length.ofInches(6);

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        for (FootingDrain drain : facts.job().water().drains()) {
            for (String label : drain.along()) {
                found.addAll(stone(facts, drain, facts.job().getWall(label)));
            }
        }
        for (Wall wall : facts.job().walls()) {
            if (wall.windowWells() > 0) {
                found.add(must("well-drained", wall.label(), Found.PRACTICE));
            }
            if (!wall.openings().isEmpty() && wall.windowWells() == 0) {
                found.add(advise("opening-without-well", wall.label(), Found.PRACTICE));
            }
            boolean drained = facts.job().water().drains().stream()
                    .anyMatch(d -> d.along().contains(wall.label()));
            if (!drained) {
                found.add(advise("wall-undrained", wall.label(), "IRC R405.1 (2009 edition on)"));
            }
        }
        return found;
    }

    private static List<Finding> stone(Facts facts, FootingDrain drain, Wall wall) {
        Length height = StoneHeight.of(facts.job(), facts.book(), drain, wall);
        Length shallow = wall.depthStart().compareTo(wall.depthEnd()) < 0 ? wall.depthStart() : wall.depthEnd();
        Length over = shallow.plus(wall.footing().thickness()).minus(height);
        return Found.when(
                over.compareTo(SOIL_OVER_STONE) < 0,
                must(
                        "stone-shallow",
                        wall.label(),
                        "IRC R405.1 (2009 edition on)",
                        "height",
                        height.text(),
                        "over",
                        over.text()));
    }
}
