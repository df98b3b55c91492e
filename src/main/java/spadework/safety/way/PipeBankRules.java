// SPDX-License-Identifier: Apache-2.0
package spadework.safety.way;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Side;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.place.OutlineSpot;
import spadework.trench.Bank;

/**
 * A pipe's trench that is deep enough to be laid back and passes a wall of the house at which nobody digs. Its bank
 * would run under that wall or bare its footing, so it is something in the bank's way as a neighbor's footing is.
 */
public final class PipeBankRules {
    private static final String UNDERMINING = "29 CFR 1926.651(i) (from memory); IBC 1804.1";

    /** A side counts as dug where its walls leave no more than so much of it, feet; common practice, no source. */
    private static final double LEFT_OVER = 0.5;

    private PipeBankRules() {}

    public static List<Finding> check(Job job) {
        List<Finding> found = new ArrayList<>();
        job.water()
                .mains()
                .forEach(main -> bank(job, main, DigBodies.main(job, main)).ifPresent(found::add));
        job.water()
                .roofLines()
                .forEach(line -> bank(job, line, DigBodies.roofLine(job, line)).ifPresent(found::add));
        return found;
    }

    private static Optional<Finding> bank(Job job, SolidRun run, DigBody body) {
        double deepest = body.deepest().feet();
        double out = body.bank().line(body.deepest()).out(deepest);
        if (out <= 0 || !Bank.isProtectedAt(deepest)) {
            return Optional.empty();
        }
        Optional<List<Side>> sides = PipeWay.sides(job, run);
        if (sides.isEmpty()) {
            return Optional.of(found("pipe-bank-way-unknown", run, deepest, out));
        }
        return sides.get().stream().allMatch(side -> isDug(job, side))
                ? Optional.empty()
                : Optional.of(found("pipe-bank-under-wall", run, deepest, out));
    }

    private static boolean isDug(Job job, Side side) {
        House house = job.site().house();
        double dug = job.walls().stream()
                .filter(wall -> wall.faces() == side)
                .map(Wall::length)
                .mapToDouble(Length::feet)
                .sum();
        return dug >= OutlineSpot.sideFeet(house, side) - LEFT_OVER;
    }

    private static Finding found(String id, SolidRun run, double deepest, double out) {
        return new Finding(
                id,
                Severity.MUST,
                run.label(),
                Map.of(
                        "depth", Length.ofFeet(deepest).text(),
                        "out", Length.ofFeet(out).text()),
                UNDERMINING);
    }
}
