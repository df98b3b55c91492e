// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import java.util.Optional;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.PitPlace;
import spadework.job.SumpPit;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.trench.BankLine;
import spadework.water.Leg;

/**
 * Ground that the hole of an outside sump shares with the trench of the wall beside it: where the footing drain runs
 * straight into the basin, at the distance from the footing that the job states. The hole is taken to lie before the
 * wall's straight part. Where nobody measured the distance nothing is taken to be shared.
 *
 * @param overlap slices of what the trench takes already, over the trench's bottom; areas are negative
 * @param areaAtGrade of it, square feet
 */
public record PitOverlap(Overlap overlap, double areaAtGrade) {

    /** @param outlet one that is a sump */
    public static Optional<PitOverlap> of(Job job, Outlet outlet) {
        boolean inside = outlet.pit().map(SumpPit::place).orElse(PitPlace.UNKNOWN) == PitPlace.INSIDE;
        Optional<Length> away = outlet.pit().flatMap(SumpPit::fromFooting);
        if (inside || away.isEmpty()) {
            return Optional.empty();
        }
        return job.water().drains().stream()
                .filter(drain -> drain.into().equals(outlet.label()))
                .findFirst()
                .flatMap(drain -> shared(job, outlet, drain, away.get().feet()));
    }

    private static Optional<PitOverlap> shared(Job job, Outlet outlet, FootingDrain drain, double away) {
        DigBody hole = SumpHole.of(job, outlet).body();
        Leg leg = leg(job, drain);
        Wall wall = leg.wall();
        double height = depth(leg, drain) + wall.footing().thickness().feet();
        double bottom = wall.digging().bottomWidth().feet();
        BankLine line = Bank.of(job.site(), wall).line(wall.deepestTrench());
        double side = hole.length();
        double low = Math.max(0, height - hole.deepest().feet());
        List<Slice> slices = SharedAreas.slices(
                low,
                height,
                line.steps(),
                List.of(over -> bottom + line.out(over) - away, over -> bottom + line.out(over) - away - side),
                over -> -side * width(bottom + line.out(over) - away, side));
        return slices.isEmpty()
                ? Optional.empty()
                : Optional.of(new PitOverlap(
                        new Overlap(List.of(wall.label()), wall.label(), slices),
                        side * width(bottom + line.out(height) - away, side)));
    }

    private static double width(double reached, double side) {
        return Math.max(0, Math.min(side, reached));
    }

    /** The wall beside which the drain runs into the basin. */
    private static Leg leg(Job job, FootingDrain drain) {
        List<Leg> legs = Leg.of(job, drain);
        if (drain.teeAt() == TeeAt.MIDDLE) {
            double half = legs.stream().mapToDouble(PitOverlap::feet).sum() / 2;
            for (Leg leg : legs) {
                if (half <= feet(leg)) {
                    return leg;
                }
                half -= feet(leg);
            }
        }
        return legs.get(drain.teeAt() == TeeAt.START ? 0 : legs.size() - 1);
    }

    /** Grade to the footing's top where the basin stands; the mean of the wall where the drain meets it half-way. */
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
