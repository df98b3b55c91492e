// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.PitPlace;
import spadework.job.Protection;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;
import spadework.water.FootingBottom;
import spadework.water.SumpDesign;
import spadework.working.Worked;

/**
 * The hole for a sump's basin. Outside, the pipe comes in at the basin's rim or below it, so the hole reaches from
 * grade down past the invert by the basin's own depth and the stone under it; inside, from the floor.
 *
 * @param body the hole as it is dug
 * @param below how far its bottom lies under the bottom of the footing beside it, feet; negative where it lies higher,
 *     empty where levels are missing
 * @param fromFooting clear distance between the two
 */
public record SumpHole(DigBody body, Optional<Double> below, Optional<Length> fromFooting) {
    /** Stone under the basin, feet; common practice, no source. */
    private static final double BEDDING = 4.0 / 12;

    /** Room to work round the basin, feet on each side; common practice, no source. */
    private static final double ROOM = 1;

    /** @param outlet one that is a sump */
    public static SumpHole of(Job job, Outlet outlet) {
        double basin = outlet.pit()
                        .flatMap(SumpPit::depth)
                        .orElse(SumpDesign.LEAST_DEPTH)
                        .feet()
                + BEDDING;
        boolean inside = isInside(outlet);
        Optional<Double> entry = inside ? Optional.of(0.0) : entry(job, outlet);
        double wall = job.walls().stream()
                .mapToDouble(one -> one.deepestTrench().feet())
                .max()
                .orElse(0);
        double depth = entry.orElse(wall) + basin;
        boolean known =
                entry.isPresent() && outlet.pit().flatMap(SumpPit::depth).isPresent();
        double side = outlet.pit()
                        .flatMap(SumpPit::diameter)
                        .orElse(SumpDesign.LEAST_DIAMETER)
                        .feet()
                + 2 * ROOM;
        boolean deep = Bank.isProtectedAt(depth);
        DigBody body = new DigBody(
                BodyKind.SUMP_PIT,
                outlet.label(),
                List.of(new BodyStation(0, depth, Optional.empty()), new BodyStation(side, depth, Optional.empty())),
                side,
                PipeTrench.bank(job.site(), deep ? Protection.SHIELDED : Protection.UPRIGHT),
                known ? DepthFrom.MEASURED : DepthFrom.USUAL,
                Optional.empty(),
                true);
        return new SumpHole(
                body,
                inside ? belowFromFloor(job, depth) : belowFromGrade(job, depth),
                outlet.pit().flatMap(SumpPit::fromFooting));
    }

    /** Whether the job says that it stands inside the house. */
    public static boolean isInside(Outlet outlet) {
        return outlet.pit().map(SumpPit::place).orElse(PitPlace.UNKNOWN) == PitPlace.INSIDE;
    }

    /** What the basin itself takes of the hole, cubic feet: a cylinder up to grade or floor. */
    public static double basinVolume(Outlet outlet, double depth) {
        double diameter = outlet.pit()
                .flatMap(SumpPit::diameter)
                .orElse(SumpDesign.LEAST_DIAMETER)
                .feet();
        return Math.PI * diameter * diameter / 4 * Math.max(0, depth - BEDDING);
    }

    /** From grade to the lowest pipe that comes in. */
    private static Optional<Double> entry(Job job, Outlet outlet) {
        Stream<Optional<Double>> drains = job.water().drains().stream()
                .filter(drain -> drain.into().equals(outlet.label()))
                .map(SumpHole::entry);
        Stream<Optional<Double>> mains = job.water().mains().stream()
                .filter(main -> main.into().equals(outlet.label()))
                .map(SumpHole::entry);
        List<Optional<Double>> all = Stream.concat(drains, mains).toList();
        return all.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : all.stream().flatMap(Optional::stream).max(Double::compare);
    }

    private static Optional<Double> entry(FootingDrain drain) {
        Optional<Length> invert = drain.teeAt() == TeeAt.START
                ? drain.startInvert()
                : drain.teeAt() == TeeAt.END ? drain.endInvert() : drain.teeInvert();
        Optional<Length> grade = Stream.of(drain.startGrade(), drain.endGrade())
                .flatMap(Optional::stream)
                .max(Length::compareTo);
        return grade.flatMap(ground -> invert.map(pipe -> ground.feet() - pipe.feet()));
    }

    private static Optional<Double> entry(SolidRun main) {
        return main.endGrade().flatMap(ground -> main.endInvert().map(pipe -> ground.feet() - pipe.feet()));
    }

    private static Optional<Double> belowFromGrade(Job job, double depth) {
        return job.walls().stream()
                .map(wall -> Math.min(wall.depthStart().feet(), wall.depthEnd().feet()))
                .min(Double::compare)
                .map(shallow -> depth - shallow - footing(job));
    }

    private static double footing(Job job) {
        return job.walls().stream()
                .map(Wall::footing)
                .mapToDouble(footing -> footing.thickness().feet())
                .min()
                .orElse(0);
    }

    private static Optional<Double> belowFromFloor(Job job, double depth) {
        Optional<Double> bottom = job.water().drains().stream()
                .map(drain -> FootingBottom.of(job, drain))
                .flatMap(levels -> Stream.of(levels.start(), levels.end()))
                .flatMap(Optional::stream)
                .map(Worked::number)
                .max(Double::compare);
        return job.site().insideFloor().flatMap(floor -> bottom.map(level -> level - (floor.feet() - depth)));
    }
}
