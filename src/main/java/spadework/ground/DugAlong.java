// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import spadework.job.BesideWall;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SolidRun;
import spadework.job.Wall;

/**
 * What is dug already along a run: from its start, in a wall's trench or a hole, and at its end, in a sump's hole.
 *
 * @param walls labels of the walls whose trenches take it
 * @param height from the bottom of what is dug at the start up to grade, feet; 0 is that bottom
 * @param from the height from which the start is dug already
 * @param faces heights at which the reach may jump
 * @param reach how far from the run's start the ground is dug at a height, feet; straight between faces and kinks
 * @param kinks lines that pass zero where the reach bends
 * @param tail feet at the run's end that lie in a hole
 * @param tailDepth from grade to that hole's bottom, feet
 */
record DugAlong(
        List<String> walls,
        double height,
        double from,
        List<Double> faces,
        DoubleUnaryOperator reach,
        List<DoubleUnaryOperator> kinks,
        double tail,
        double tailDepth) {

    /** Nothing is dug where a run starts. */
    private static final DugAlong NOTHING = new DugAlong(List.of(), 0, 0, List.of(), over -> 0, List.of(), 0, 0);

    /** All of a run so long, down to that depth. */
    static DugAlong all(double length, double depth) {
        return new DugAlong(List.of(), depth, 0, List.of(), over -> length, List.of(), 0, 0);
    }

    /** A main begins at the tee in the middle of the trench's bottom, or in the trench that the job names. */
    static DugAlong main(Job job, SolidRun main) {
        Optional<DugAlong> start = named(job, main)
                .map(tee -> from(
                        tee, 0, along(main) - tee.wall().digging().bottomWidth().feet() / 2))
                .or(() -> drainInto(job, main.label()).map(drain -> {
                    DrainTee tee = DrainTee.of(job, drain);
                    return from(tee, 0, -tee.wall().digging().bottomWidth().feet() / 2);
                }));
        return start.orElse(NOTHING).endingIn(job, main);
    }

    /** A roof line begins at the face of the wall that the job names; over the footing's top the trench does too. */
    static DugAlong roofLine(Job job, SolidRun line) {
        return named(job, line)
                .map(tee -> fromFace(tee, along(line)))
                .orElse(NOTHING)
                .endingIn(job, line);
    }

    /** A lead begins where the bottom of the wall's trench ends, and over that in its bank. */
    static DugAlong lead(Job job, FootingDrain drain) {
        DrainTee tee = SumpLead.tee(job, drain);
        return from(tee, 0, -tee.wall().digging().bottomWidth().feet());
    }

    /** A sump's discharge pipe begins in the hole, or at the wall where the sump stands inside. */
    static DugAlong discharge(Job job, Outlet outlet) {
        if (SumpHole.isInside(outlet)) {
            return drainInto(job, outlet.label())
                    .map(drain -> fromFace(DrainTee.of(job, drain), 0))
                    .orElse(NOTHING);
        }
        DigBody hole = SumpHole.of(job, outlet).body();
        double half = hole.length() / 2;
        Optional<PitOverlap.Beside> beside = PitOverlap.Beside.of(job, outlet);
        if (beside.isEmpty()) {
            return new DugAlong(List.of(), hole.deepest().feet(), 0, List.of(), over -> half, List.of(), 0, 0);
        }
        DrainTee tee = beside.get().tee();
        double center = beside.get().away() + half;
        DoubleUnaryOperator past = over -> tee.reach(over) - center - half;
        return new DugAlong(
                List.of(tee.wall().label()),
                tee.height(),
                0,
                tee.line().steps(),
                over -> half + Math.max(0, past.applyAsDouble(over)),
                List.of(past),
                0,
                0);
    }

    static Optional<FootingDrain> drainInto(Job job, String label) {
        return job.water().drains().stream()
                .filter(drain -> drain.into().equals(label))
                .findFirst();
    }

    private static Optional<DrainTee> named(Job job, SolidRun run) {
        Optional<String> label = run.beside().map(BesideWall::wall);
        return job.walls().stream()
                .filter(wall -> label.equals(Optional.of(wall.label())))
                .findFirst()
                .map(wall -> DrainTee.before(job, wall));
    }

    private static double along(SolidRun run) {
        return run.beside().map(beside -> beside.length().feet()).orElse(0.0);
    }

    private static DugAlong from(DrainTee tee, double from, double more) {
        return new DugAlong(
                List.of(tee.wall().label()),
                tee.height(),
                from,
                tee.line().steps(),
                over -> tee.reach(over) + more,
                List.of(),
                0,
                0);
    }

    private static DugAlong fromFace(DrainTee tee, double along) {
        Wall wall = tee.wall();
        double footing = wall.footing().thickness().feet();
        return from(tee, footing, along + wall.footing().projection().feet());
    }

    /** The same for a run that gives its water into an outside sump: it ends over the middle of the hole. */
    private DugAlong endingIn(Job job, SolidRun run) {
        return job.water().outlets().stream()
                .filter(outlet -> outlet.label().equals(run.into()))
                .filter(outlet -> outlet.kind() == OutletKind.SUMP && !SumpHole.isInside(outlet))
                .findFirst()
                .map(outlet -> endingIn(SumpHole.of(job, outlet).body()))
                .orElse(this);
    }

    /** Heights are told over the deeper bottom of the two. */
    private DugAlong endingIn(DigBody hole) {
        double deep = hole.deepest().feet();
        double up = Math.max(0, deep - height);
        return new DugAlong(
                walls,
                height + up,
                from + up,
                faces.stream().map(face -> face + up).toList(),
                over -> reach.applyAsDouble(over - up),
                List.of(),
                hole.length() / 2,
                deep);
    }

    /** Feet from the start that are dug already so far under grade. */
    double reachAt(double down) {
        double over = height - down;
        return over < from ? 0 : Math.max(0, reach.applyAsDouble(over));
    }

    /** Feet at the end that are dug already so far under grade. */
    double tailAt(double down) {
        return down < tailDepth ? tail : 0;
    }

    /** How far under grade something is dug already at all, feet. */
    double deepest() {
        return Math.max(height - from, tail > 0 ? tailDepth : 0);
    }
}
