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
import spadework.job.PitPlace;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.measure.Length;
import spadework.trench.BankLine;

/**
 * The first feet of a pipe's trench, that are dug already: of a main, from the tee in the middle of the wall's trench
 * to its bank; of a sump's discharge pipe, from the middle of the hole outside to the hole's edge or the bank, or from
 * the wall where the sump stands inside. The pipe is taken to leave the wall at a right angle before its straight part.
 *
 * @param overlap slices of what is dug already; areas are negative
 * @param areaAtGrade of it, square feet
 */
public record RunOverlap(Overlap overlap, double areaAtGrade) {

    /**
     * What is dug already along a run.
     *
     * @param height from the bottom of what is dug there up to grade, feet; 0 is that bottom
     * @param faces heights at which the reach may jump
     * @param reach how far from the run's start the ground is dug at a height, feet; straight between faces and kinks
     * @param kinks lines that pass zero where the reach bends
     */
    private record Open(
            List<String> walls,
            double height,
            double from,
            List<Double> faces,
            DoubleUnaryOperator reach,
            List<DoubleUnaryOperator> kinks) {}

    /** All on a job, each place once. */
    public static double areaAtGrade(Job job) {
        Stream<Optional<RunOverlap>> mains = job.water().mains().stream().map(main -> ofMain(job, main));
        Stream<Optional<RunOverlap>> discharges =
                job.water().outlets().stream().map(outlet -> ofDischarge(job, outlet));
        return Stream.concat(mains, discharges)
                .flatMap(Optional::stream)
                .mapToDouble(RunOverlap::areaAtGrade)
                .sum();
    }

    /** Empty where no footing drain runs into the main. */
    public static Optional<RunOverlap> ofMain(Job job, SolidRun main) {
        return drainInto(job, main.label()).flatMap(drain -> {
            DrainTee tee = DrainTee.of(job, drain);
            double middle = tee.wall().digging().bottomWidth().feet() / 2;
            Open open = new Open(
                    List.of(tee.wall().label()),
                    tee.height(),
                    0,
                    tee.line().steps(),
                    over -> tee.reach(over) - middle,
                    List.of());
            return shared(DigBodies.main(job.site(), main), open);
        });
    }

    /** Empty where an outlet is no sump, has no discharge pipe, or nothing is known of what is dug where it starts. */
    public static Optional<RunOverlap> ofDischarge(Job job, Outlet outlet) {
        if (outlet.kind() != OutletKind.SUMP) {
            return Optional.empty();
        }
        Optional<DrainTee> tee = drainInto(job, outlet.label()).map(drain -> DrainTee.of(job, drain));
        boolean inside = outlet.pit().map(SumpPit::place).orElse(PitPlace.UNKNOWN) == PitPlace.INSIDE;
        Optional<Open> open = inside
                ? tee.map(RunOverlap::fromWall)
                : Optional.of(fromHole(job, outlet, tee.stream().toList()));
        return open.flatMap(dug -> DigBodies.discharge(job.site(), outlet).flatMap(body -> shared(body, dug)));
    }

    private static Optional<FootingDrain> drainInto(Job job, String label) {
        return job.water().drains().stream()
                .filter(drain -> drain.into().equals(label))
                .findFirst();
    }

    /** Over the footing's top the trench begins at the wall. */
    private static Open fromWall(DrainTee tee) {
        double projection = tee.wall().footing().projection().feet();
        return new Open(
                List.of(tee.wall().label()),
                tee.height(),
                tee.wall().footing().thickness().feet(),
                tee.line().steps(),
                over -> projection + tee.reach(over),
                List.of());
    }

    /** @param tees where a drain gives its water into the sump; none or one */
    private static Open fromHole(Job job, Outlet outlet, List<DrainTee> tees) {
        DigBody hole = SumpHole.of(job, outlet).body();
        double half = hole.length() / 2;
        Optional<Length> away = outlet.pit().flatMap(SumpPit::fromFooting);
        if (tees.isEmpty() || away.isEmpty()) {
            return new Open(List.of(), hole.deepest().feet(), 0, List.of(), over -> half, List.of());
        }
        DrainTee beside = tees.get(0);
        double center = away.get().feet() + half;
        DoubleUnaryOperator past = over -> beside.reach(over) - center - half;
        return new Open(
                List.of(beside.wall().label()),
                beside.height(),
                0,
                beside.line().steps(),
                over -> half + Math.max(0, past.applyAsDouble(over)),
                List.of(past));
    }

    private static Optional<RunOverlap> shared(DigBody run, Open open) {
        List<Slice> slices = SharedAreas.slices(
                Math.max(open.from(), open.height() - run.deepest().feet()),
                open.height(),
                open.faces(),
                lines(run, open),
                over -> -area(run, open.height() - over, open.reach().applyAsDouble(over)));
        return slices.isEmpty()
                ? Optional.empty()
                : Optional.of(new RunOverlap(
                        new Overlap(
                                open.walls(), open.walls().stream().findFirst().orElse(run.label()), slices),
                        area(run, 0, open.reach().applyAsDouble(open.height()))));
    }

    /** Where the reach passes a station, and where bottom or bank of the run's trench pass a station or the reach. */
    private static List<DoubleUnaryOperator> lines(DigBody run, Open open) {
        List<DoubleUnaryOperator> lines = new ArrayList<>(open.kinks());
        List<Double> steps = new ArrayList<>(run.line().steps());
        steps.add(0.0);
        DoubleUnaryOperator reach = open.reach();
        double height = open.height();
        for (int i = 0; i < run.stations().size(); i++) {
            BodyStation here = run.stations().get(i);
            lines.add(over -> reach.applyAsDouble(over) - here.at());
            for (double step : steps) {
                lines.add(over -> here.depth() - (height - over) - step);
                if (i > 0) {
                    BodyStation before = run.stations().get(i - 1);
                    lines.add(over -> depth(before, here, reach.applyAsDouble(over)) - (height - over) - step);
                }
            }
        }
        return lines;
    }

    private static double depth(BodyStation a, BodyStation b, double at) {
        return b.at() > a.at() ? a.depth() + (b.depth() - a.depth()) * (at - a.at()) / (b.at() - a.at()) : a.depth();
    }

    /** Plan area of the run's trench so far under grade, from its start to the reach. */
    private static double area(DigBody run, double down, double reach) {
        double sum = 0;
        for (int i = 1; i < run.stations().size(); i++) {
            BodyStation a = run.stations().get(i - 1);
            BodyStation b = run.stations().get(i);
            double to = Math.min(b.at(), reach);
            if (to > a.at()) {
                sum += area(run, a, b, down, to);
            }
        }
        return sum;
    }

    /** Between two stations, cut where the bottom or a step of the bank comes to that level. */
    private static double area(DigBody run, BodyStation a, BodyStation b, double down, double to) {
        List<Double> cuts = new ArrayList<>(List.of(a.at(), to));
        List<Double> steps = new ArrayList<>(run.line().steps());
        steps.add(0.0);
        for (double step : steps) {
            double rise = b.depth() - a.depth();
            double at = a.at() + (b.at() - a.at()) * (down + step - a.depth()) / rise;
            if (rise != 0 && at > a.at() && at < to) {
                cuts.add(at);
            }
        }
        cuts.sort(Double::compare);
        boolean laidBack = run.isLaidBack((a.depth() + b.depth()) / 2);
        double sum = 0;
        for (int i = 1; i < cuts.size(); i++) {
            double middle = (cuts.get(i - 1) + cuts.get(i)) / 2;
            double over = depth(a, b, middle) - down;
            if (over > 0) {
                BankLine line = run.line();
                sum += (cuts.get(i) - cuts.get(i - 1)) * (run.width() + (laidBack ? 2 * line.out(over) : 0));
            }
        }
        return sum;
    }
}
