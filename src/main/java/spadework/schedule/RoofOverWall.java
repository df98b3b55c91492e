// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import spadework.job.BesideWall;
import spadework.job.Downspout;
import spadework.job.HousePlace;
import spadework.job.Job;
import spadework.job.SoilType;
import spadework.job.SolidRun;
import spadework.job.Wall;
import spadework.takeoff.TakeoffLine;
import spadework.trench.SlopeTable;

/**
 * Roof lines that lie over a dug wall: where a downspout comes down before an open trench, its pipe has no ground to
 * lie on until that trench is filled to the pipe's bed, and the drain under it is not covered before its water test.
 * Days and steps both ask here.
 */
public final class RoofOverWall {
    /** Feet of bank at the end of a trench for each foot of its depth: the flattest that the table of slopes knows. */
    private static final double END_BANK = SlopeTable.run(SoilType.NOT_CLASSED);

    private RoofOverWall() {}

    /**
     * Whether a roof line begins over a dug wall with a drain at its foot. A downspout of which nobody wrote where it
     * comes down counts as standing there: to lay its pipe later harms nothing.
     */
    public static boolean isOver(Job job, SolidRun line) {
        return !job.walls().isEmpty()
                && !job.water().drains().isEmpty()
                && (line.beside().map(BesideWall::wall).isPresent()
                        || job.water().downspouts().stream()
                                .filter(downspout -> downspout.into().equals(line.label()))
                                .anyMatch(downspout -> isBeforeADugWall(job, downspout)));
    }

    private static boolean isBeforeADugWall(Job job, Downspout downspout) {
        return downspout
                .place()
                .map(spot -> job.walls().stream().anyMatch(wall -> isBefore(wall, spot)))
                .orElse(true);
    }

    private static boolean isBefore(Wall wall, HousePlace spot) {
        double past = wall.digging().bottomWidth().feet()
                + END_BANK * wall.deepestTrench().feet();
        double from = wall.from().feet() - past;
        double to = wall.from().plus(wall.length()).feet() + past;
        return spot.side() == wall.faces()
                && spot.from().feet() >= from
                && spot.from().feet() <= to;
    }

    /** Whether a line of the price is measured at such a roof line. */
    static boolean isAt(Job job, TakeoffLine line) {
        return line.from()
                .filter(quantity -> job.water().roofLines().stream()
                        .anyMatch(run -> run.label().equals(quantity.label()) && isOver(job, run)))
                .isPresent();
    }
}
