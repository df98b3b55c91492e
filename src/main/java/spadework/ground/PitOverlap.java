// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import java.util.Optional;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.PitPlace;
import spadework.job.SumpPit;
import spadework.measure.Length;

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
        DrainTee tee = DrainTee.of(job, drain);
        double height = tee.height();
        double side = hole.length();
        double low = Math.max(0, height - hole.deepest().feet());
        List<Slice> slices = SharedAreas.slices(
                low,
                height,
                tee.line().steps(),
                List.of(over -> tee.reach(over) - away, over -> tee.reach(over) - away - side),
                over -> -side * width(tee.reach(over) - away, side));
        String wall = tee.wall().label();
        return slices.isEmpty()
                ? Optional.empty()
                : Optional.of(new PitOverlap(
                        new Overlap(List.of(wall), wall, slices), side * width(tee.reach(height) - away, side)));
    }

    private static double width(double reached, double side) {
        return Math.max(0, Math.min(side, reached));
    }
}
