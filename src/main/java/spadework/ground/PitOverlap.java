// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import java.util.Optional;
import spadework.job.BesideWall;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.NamedWalls;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.job.Wall;
import spadework.measure.Length;

/**
 * Ground that the hole of an outside sump shares with the trench of the wall beside it: at the distance from the
 * footing that the job states, or that follows from a straight main between the two. Where nobody knows the distance
 * nothing is taken to be shared.
 *
 * @param overlap slices of what the trench takes already, over the trench's bottom; areas are negative
 * @param areaAtGrade of it, square feet
 */
public record PitOverlap(Overlap overlap, double areaAtGrade) {

    /** @param outlet one that is a sump */
    public static Optional<PitOverlap> of(Job job, Outlet outlet) {
        return Beside.of(job, outlet).flatMap(beside -> shared(job, outlet, beside.tee(), beside.away()));
    }

    private static Optional<PitOverlap> shared(Job job, Outlet outlet, DrainTee tee, double away) {
        DigBody hole = SumpHole.of(job, outlet).body();
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

    /**
     * The trench at a wall beside the hole of an outside sump. The hole is taken to lie before the wall's straight
     * part.
     *
     * @param tee where the wall's drain gives its water away, to the basin or to a main that runs there
     * @param away clear distance from the footing to the hole, feet
     */
    record Beside(DrainTee tee, double away) {

        /**
         * Empty where the sump stands inside, where no drain's water comes to it, or where nobody knows the distance:
         * it is measured, from the wall that the outlet's words name or else from where the drain gives its water
         * away, or follows from a main that runs straight from the middle of the trench to the middle of
         * the hole.
         */
        static Optional<Beside> of(Job job, Outlet outlet) {
            if (SumpHole.isInside(outlet)) {
                return Optional.empty();
            }
            Optional<Double> measured =
                    outlet.pit().flatMap(SumpPit::fromFooting).map(Length::feet);
            Optional<Wall> named = NamedWalls.only(job, outlet.what());
            if (named.isPresent() && measured.isPresent()) {
                return Optional.of(new Beside(DrainTee.before(job, named.get()), measured.get()));
            }
            Optional<FootingDrain> straight = DugAlong.drainInto(job, outlet.label());
            if (straight.isPresent()) {
                return measured.map(away -> new Beside(DrainTee.of(job, straight.get()), away));
            }
            return job.water().mains().stream()
                    .filter(main -> main.into().equals(outlet.label()))
                    .flatMap(main -> DugAlong.drainInto(job, main.label())
                            .flatMap(drain -> over(
                                    job,
                                    outlet,
                                    main,
                                    DrainTee.of(job, drain),
                                    measured.stream().toList()))
                            .stream())
                    .findFirst();
        }

        private static Optional<Beside> over(
                Job job, Outlet outlet, SolidRun main, DrainTee tee, List<Double> measured) {
            boolean along = main.beside()
                    .map(BesideWall::length)
                    .filter(Length::isPositive)
                    .isPresent();
            if (measured.isEmpty() && (main.bends() > 0 || along)) {
                return Optional.empty();
            }
            double half = SumpHole.of(job, outlet).body().length() / 2;
            double middle = tee.wall().digging().bottomWidth().feet() / 2;
            double away = measured.isEmpty() ? middle + main.length().feet() - half : measured.get(0);
            return Optional.of(new Beside(tee, Math.max(0, away)));
        }
    }
}
