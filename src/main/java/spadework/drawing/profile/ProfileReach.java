// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.measure.Length;

/**
 * One pipe of a chain, in the direction of flow. What was not measured is empty and stays undrawn.
 *
 * @param label as on the plan
 * @param length above zero
 * @param startInvert level of the pipe's inside bottom where the water enters
 * @param endInvert the same where it leaves
 * @param startGrade level of the ground over the start
 * @param endGrade level of the ground over the end
 * @param between the ground at corners that it passes, in order; straight lines would miss them
 */
public record ProfileReach(
        String label,
        Kind kind,
        Length length,
        Optional<Length> startInvert,
        Optional<Length> endInvert,
        Optional<Length> startGrade,
        Optional<Length> endGrade,
        List<GroundPoint> between,
        Length insideDiameter,
        Length outsideDiameter) {

    /** What the pipe is. */
    public enum Kind {
        DRAIN,
        MAIN,
        ROOF_LINE
    }

    /** @throws IllegalArgumentException if the length is not above zero */
    public ProfileReach {
        between = List.copyOf(between);
        if (!length.isPositive()) {
            throw new IllegalArgumentException("a reach must have a length");
        }
    }

    /** Ground over the pipe's outside top where the water enters; empty where a level is not known. */
    Optional<Length> startCover() {
        return startGrade.flatMap(grade -> startInvert.map(invert -> cover(grade, invert)));
    }

    /** The same where the water leaves. */
    Optional<Length> endCover() {
        return endGrade.flatMap(grade -> endInvert.map(invert -> cover(grade, invert)));
    }

    private Length cover(Length grade, Length invert) {
        double top = (insideDiameter.feet() + outsideDiameter.feet()) / 2;
        return grade.minus(invert).minus(Length.ofFeet(top));
    }

    /** The ground from end to end, with every corner between; empty where it is not known at both ends. */
    List<GroundPoint> ground() {
        if (startGrade.isEmpty() || endGrade.isEmpty()) {
            return List.of();
        }
        List<GroundPoint> ground = new ArrayList<>();
        ground.add(new GroundPoint(Length.ZERO, startGrade.get()));
        ground.addAll(between);
        ground.add(new GroundPoint(length, endGrade.get()));
        return ground;
    }

    boolean isLeveled() {
        return startInvert.isPresent() && endInvert.isPresent();
    }

    /** Fall for each length, above zero when the water runs; only where both inverts are known. */
    double slope() {
        return startInvert.orElseThrow().minus(endInvert.orElseThrow()).feet() / length.feet();
    }
}
