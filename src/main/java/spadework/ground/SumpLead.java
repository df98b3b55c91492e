// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.NamedWalls;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Protection;
import spadework.job.SumpPit;
import spadework.measure.Length;
import spadework.trench.Bank;

/**
 * The trench of a lead: a drain's water goes straight into a basin outside, from the bottom of the wall's trench to the
 * edge of the hole.
 */
final class SumpLead {
    /** Width of its bottom, feet: 12 in, as of other pipe trenches; common practice, no source. */
    private static final double WIDTH = 1;

    private SumpLead() {}

    /**
     * Empty where the drain runs into no basin outside, or where nobody wrote how far the basin lies from the footing.
     * Where levels are missing it is as deep as the wall's trench; from 5 ft it is shielded, as the hole is to which it
     * leads.
     */
    static Optional<DigBody> of(Job job, FootingDrain drain) {
        DrainTee tee = tee(job, drain);
        double bottom = tee.wall().digging().bottomWidth().feet();
        return sump(job, drain)
                .flatMap(Outlet::pit)
                .flatMap(SumpPit::fromFooting)
                .map(away -> away.feet() - bottom)
                .filter(feet -> feet > 0)
                .map(feet -> body(job, drain, feet, tee.height()));
    }

    /** Before the wall that the words of the sump name, as its hole is; else where the drain gives its water away. */
    static DrainTee tee(Job job, FootingDrain drain) {
        return sump(job, drain)
                .flatMap(outlet -> NamedWalls.only(job, outlet.what()))
                .map(wall -> DrainTee.before(job, wall))
                .orElseGet(() -> DrainTee.of(job, drain));
    }

    private static Optional<Outlet> sump(Job job, FootingDrain drain) {
        return job.water().outlets().stream()
                .filter(outlet -> outlet.label().equals(drain.into()))
                .filter(outlet -> outlet.kind() == OutletKind.SUMP && !SumpHole.isInside(outlet))
                .findFirst();
    }

    private static DigBody body(Job job, FootingDrain drain, double feet, double trench) {
        Optional<Double> levels = depth(drain);
        double depth = levels.orElse(trench);
        Protection protection = Bank.isProtectedAt(depth) ? Protection.SHIELDED : Protection.UPRIGHT;
        return new DigBody(
                BodyKind.LEAD,
                drain.label(),
                List.of(new BodyStation(0, depth, Optional.empty()), new BodyStation(feet, depth, Optional.empty())),
                WIDTH,
                PipeTrench.bank(job.site(), protection),
                levels.isPresent() ? DepthFrom.MEASURED : DepthFrom.USUAL,
                Optional.empty(),
                true);
    }

    /** From the higher ground at the drain's ends to the bed under the pipe that leaves it. */
    private static Optional<Double> depth(FootingDrain drain) {
        Optional<Length> invert = switch (drain.teeAt()) {
            case START -> drain.startInvert();
            case MIDDLE -> drain.teeInvert();
            case END -> drain.endInvert();
        };
        Optional<Length> grade = Stream.of(drain.startGrade(), drain.endGrade())
                .flatMap(Optional::stream)
                .max(Length::compareTo);
        return grade.flatMap(ground -> invert.map(pipe -> ground.feet() - pipe.feet() + PipeTrench.BEDDING));
    }
}
