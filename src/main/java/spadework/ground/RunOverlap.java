// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SolidRun;

/**
 * The feet of a pipe's trench that are dug already: of a main, from the tee in the middle of the wall's trench to its
 * bank; of a roof line, from the wall at which the job says that it begins; of a sump's discharge pipe, from the middle
 * of the hole outside to the hole's edge or the bank, or from the wall where the sump stands inside; and of a run that
 * ends in an outside sump, the last feet in its hole. The pipe is taken to leave the wall at a right angle, after what
 * the job says that it runs along it.
 *
 * @param overlap slices of what is dug already; areas are negative
 * @param areaAtGrade of it, square feet
 */
public record RunOverlap(Overlap overlap, double areaAtGrade) {
    /** Cubic feet in which a run may differ from what is dug already and still lie in it: noise of floating point. */
    private static final double NOISE = 1e-6;

    /** All on a job, each place once. */
    public static double areaAtGrade(Job job) {
        Stream<Optional<RunOverlap>> mains = job.water().mains().stream().map(main -> ofMain(job, main));
        Stream<Optional<RunOverlap>> lines = job.water().roofLines().stream().map(line -> ofRoofLine(job, line));
        Stream<Optional<RunOverlap>> discharges =
                job.water().outlets().stream().map(outlet -> ofDischarge(job, outlet));
        Stream<Optional<RunOverlap>> leads = job.water().drains().stream().map(drain -> ofLead(job, drain));
        return Stream.of(mains, lines, leads, discharges)
                .flatMap(each -> each)
                .flatMap(Optional::stream)
                .mapToDouble(RunOverlap::areaAtGrade)
                .sum();
    }

    /** Empty where nothing of it is dug already. */
    public static Optional<RunOverlap> ofMain(Job job, SolidRun main) {
        return shared(PipeTrench.main(job, main), DugAlong.main(job, main));
    }

    /** Empty where nobody says at which dug wall it begins, and no hole takes its end. */
    public static Optional<RunOverlap> ofRoofLine(Job job, SolidRun line) {
        return shared(PipeTrench.of(job.site(), BodyKind.ROOF_LINE, line), DugAlong.roofLine(job, line));
    }

    /** Empty where a drain has no lead, or where the wall's trench has no bank that takes part of it. */
    public static Optional<RunOverlap> ofLead(Job job, FootingDrain drain) {
        return SumpLead.of(job, drain).flatMap(body -> shared(body, DugAlong.lead(job, drain)));
    }

    /** Empty where an outlet is no sump, has no discharge pipe, or nothing is known of what is dug where it starts. */
    public static Optional<RunOverlap> ofDischarge(Job job, Outlet outlet) {
        return outlet.kind() == OutletKind.SUMP
                ? DigBodies.discharge(job.site(), outlet).flatMap(body -> shared(body, DugAlong.discharge(job, outlet)))
                : Optional.empty();
    }

    /** Whether all of a body is dug already: people in it stand in the other trench, that its own findings cover. */
    boolean isAllOf(DigBody run) {
        double deepest = run.deepest().feet();
        DugAlong whole = DugAlong.all(run.length(), deepest);
        double all = shared(run, whole).map(once -> once.overlap().volume()).orElse(0.0);
        return overlap.volume() - all < NOISE;
    }

    private static Optional<RunOverlap> shared(DigBody run, DugAlong dug) {
        double height = dug.height();
        double down = Math.min(dug.deepest(), run.deepest().feet());
        List<Double> faces = new ArrayList<>(dug.faces());
        faces.add(dug.from());
        if (dug.tail() > 0) {
            faces.add(height - dug.tailDepth());
        }
        List<Slice> slices = SharedAreas.slices(
                height - down, height, faces, lines(run, dug), over -> -area(run, dug, height - over));
        return slices.isEmpty()
                ? Optional.empty()
                : Optional.of(new RunOverlap(
                        new Overlap(
                                dug.walls(), dug.walls().stream().findFirst().orElse(run.label()), slices),
                        area(run, dug, 0)));
    }

    /** Plan area of what is dug already so far under grade: at its start, and at its end what the start leaves. */
    private static double area(DigBody run, DugAlong dug, double down) {
        double reach = Math.min(run.length(), dug.reachAt(down));
        double tail = Math.max(reach, run.length() - dug.tailAt(down));
        return run.area(down, 0, reach) + run.area(down, tail, run.length());
    }

    /** Where the reach passes a station, and where bottom or bank of the run's trench pass a station or the reach. */
    private static List<DoubleUnaryOperator> lines(DigBody run, DugAlong dug) {
        List<DoubleUnaryOperator> lines = new ArrayList<>(dug.kinks());
        List<Double> steps = new ArrayList<>(run.line().steps());
        steps.add(0.0);
        DoubleUnaryOperator reach = dug.reach();
        double height = dug.height();
        double tail = run.length() - dug.tail();
        if (dug.tail() > 0) {
            lines.add(over -> reach.applyAsDouble(over) - tail);
        }
        for (int i = 0; i < run.stations().size(); i++) {
            BodyStation here = run.stations().get(i);
            lines.add(over -> reach.applyAsDouble(over) - here.at());
            for (double step : steps) {
                lines.add(over -> here.depth() - (height - over) - step);
                if (i > 0) {
                    BodyStation before = run.stations().get(i - 1);
                    lines.add(over -> before.depthTo(here, reach.applyAsDouble(over)) - (height - over) - step);
                    if (dug.tail() > 0) {
                        double deep = before.depthTo(here, tail);
                        lines.add(over -> deep - (height - over) - step);
                    }
                }
            }
        }
        return lines;
    }
}
