// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spadework.job.Job;
import spadework.job.Side;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.place.OutlineSpot;

/** Trees and lines around the house, nearest first; a line before several walls is one line. */
public record Surroundings(List<PlanLimit> limits) {

    static Surroundings of(Job job) {
        List<PlanLimit> limits = new ArrayList<>();
        for (SiteLimit given : job.site().limits()) {
            Wall wall = job.getWall(given.wall());
            PlanLimit limit = new PlanLimit(
                    given.kind(),
                    wall.faces(),
                    wall.from().feet(),
                    wall.from().plus(wall.length()).feet(),
                    given.distance().feet(),
                    given.distance().text());
            add(limits, limit);
        }
        limits.sort(Comparator.comparingDouble(PlanLimit::distanceFeet));
        return new Surroundings(List.copyOf(limits));
    }

    private static void add(List<PlanLimit> limits, PlanLimit limit) {
        for (int i = 0; i < limits.size(); i++) {
            if (limits.get(i).isSameLineAs(limit)) {
                limits.set(i, limits.get(i).joinedWith(limit));
                return;
            }
        }
        limits.add(limit);
    }

    /** What stands before a side, nearest first. */
    List<PlanLimit> on(Side side) {
        return limits.stream().filter(limit -> limit.side() == side).toList();
    }

    /** How far the lines lie from their walls, feet, nearest first. */
    List<Double> lineFeet() {
        return limits.stream()
                .filter(limit -> !limit.isTree())
                .map(PlanLimit::distanceFeet)
                .toList();
    }

    /** Whether a line runs up and down the sheet. */
    boolean hasUprightLines() {
        return limits.stream().anyMatch(limit -> !limit.isTree() && !OutlineSpot.isAcross(limit.side()));
    }
}
