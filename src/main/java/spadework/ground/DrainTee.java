// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.trench.Bank;
import spadework.trench.BankLine;
import spadework.water.Leg;

/**
 * Where a footing drain gives its water away, or another pipe leaves the trench at a wall.
 *
 * @param wall beside which that is
 * @param height of the trench there, from its bottom to grade, feet
 * @param line of the trench's outer bank
 */
record DrainTee(Wall wall, double height, BankLine line) {

    static DrainTee of(Job job, FootingDrain drain) {
        Leg leg = leg(job, drain);
        Wall wall = leg.wall();
        double height = depth(leg, drain) + wall.footing().thickness().feet();
        return of(job, wall, height);
    }

    /** The trench before a wall, at its mean depth. */
    static DrainTee before(Job job, Wall wall) {
        double mean = (wall.depthStart().feet() + wall.depthEnd().feet()) / 2;
        return of(job, wall, mean + wall.footing().thickness().feet());
    }

    private static DrainTee of(Job job, Wall wall, double height) {
        return new DrainTee(wall, height, Bank.of(job.site(), wall).line(wall.deepestTrench()));
    }

    /** How far the trench reaches beyond the footing at that height over its bottom, feet. */
    double reach(double height) {
        return wall.digging().bottomWidth().feet() + line.out(height);
    }

    private static Leg leg(Job job, FootingDrain drain) {
        List<Leg> legs = Leg.of(job, drain);
        if (drain.teeAt() == TeeAt.MIDDLE) {
            double half = legs.stream().mapToDouble(DrainTee::feet).sum() / 2;
            for (Leg leg : legs) {
                if (half <= feet(leg)) {
                    return leg;
                }
                half -= feet(leg);
            }
        }
        return legs.get(drain.teeAt() == TeeAt.START ? 0 : legs.size() - 1);
    }

    /** Grade to the footing's top there; the mean of the wall where the drain gives its water away half-way. */
    private static double depth(Leg leg, FootingDrain drain) {
        return switch (drain.teeAt()) {
            case START -> leg.depthIn().feet();
            case END -> leg.depthOut().feet();
            case MIDDLE -> (leg.depthIn().feet() + leg.depthOut().feet()) / 2;
        };
    }

    private static double feet(Leg leg) {
        return leg.wall().length().feet();
    }
}
