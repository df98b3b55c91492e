// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.job.Job;
import spadework.job.Protection;
import spadework.job.Site;
import spadework.job.SolidRun;
import spadework.job.TrenchSize;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.trench.Bank;
import spadework.water.DrainGround;
import spadework.working.Listed;

/** A trench for solid pipe away from the house, as deep as the levels of its pipe and of the ground make it. */
final class PipeTrench {
    /** Under solid pipe, feet: 2 in; common practice, no source. */
    static final double BEDDING = 2.0 / 12;

    /** The usual trench of a sump's discharge pipe: 12 in wide, 18 in deep; common practice, no source. */
    static final TrenchSize USUAL_DISCHARGE = new TrenchSize(Length.ofInches(12), Length.ofInches(18));

    private PipeTrench() {}

    /**
     * The trench of a main. Where its ground at the start and its drain's there were shot at two levels, it is as deep
     * as from the higher one until somebody has shot it again.
     */
    static DigBody main(Job job, SolidRun main) {
        return of(job.site(), BodyKind.MAIN, main.withStartGrade(startGrade(job, main)));
    }

    private static Optional<Length> startGrade(Job job, SolidRun main) {
        return main.startGrade()
                .flatMap(own -> Stream.concat(
                                Stream.of(own),
                                job.water().drains().stream()
                                        .filter(drain -> drain.into().equals(main.label()))
                                        .flatMap(drain -> DrainGround.atTee(job, drain).stream()))
                        .max(Length::compareTo));
    }

    static DigBody of(Site site, BodyKind kind, SolidRun run) {
        Optional<Double> start =
                run.startGrade().flatMap(grade -> run.startInvert().map(invert -> depth(grade, invert)));
        Optional<Double> end = run.endGrade().flatMap(grade -> run.endInvert().map(invert -> depth(grade, invert)));
        double length = run.length().feet();
        if (start.isEmpty() || end.isEmpty()) {
            return typed(site, kind, run.label(), length, run.trench(), DepthFrom.TYPED);
        }
        List<BodyStation> stations = stations(length, start.get(), end.get(), run);
        double deepest = stations.stream().mapToDouble(BodyStation::depth).max().orElse(0);
        Bank bank = bank(site, run.trench(), deepest);
        return new DigBody(
                kind,
                run.label(),
                split(stations, bank),
                run.trench().width().feet(),
                bank,
                DepthFrom.MEASURED,
                Optional.of(run.trench().depth()),
                true);
    }

    /** A trench of one depth, as typed or as usual. */
    static DigBody typed(Site site, BodyKind kind, String label, double length, TrenchSize size, DepthFrom from) {
        double depth = size.depth().feet();
        return new DigBody(
                kind,
                label,
                List.of(new BodyStation(0, depth, Optional.empty()), new BodyStation(length, depth, Optional.empty())),
                size.width().feet(),
                bank(site, size, depth),
                from,
                Optional.empty(),
                true);
    }

    private static double depth(Length grade, Length invert) {
        return grade.feet() - invert.feet() + BEDDING;
    }

    /** Where the pipe comes out of the ground the trench ends. */
    private static List<BodyStation> stations(double length, double start, double end, SolidRun run) {
        List<BodyStation> stations = new ArrayList<>();
        stations.add(new BodyStation(0, Math.max(0, start), run.startGrade()));
        if (start * end < 0) {
            stations.add(new BodyStation(length * start / (start - end), 0, Optional.empty()));
        }
        stations.add(new BodyStation(length, Math.max(0, end), run.endGrade()));
        return stations;
    }

    /** A station more where a trench gets as deep as it has to be laid back, and at each step of benches. */
    private static List<BodyStation> split(List<BodyStation> stations, Bank bank) {
        if (bank.slope().number() == 0) {
            return stations;
        }
        double deepest = stations.stream().mapToDouble(BodyStation::depth).max().orElse(0);
        List<Double> depths = new ArrayList<>(bank.line(Length.ofFeet(deepest)).steps());
        depths.add(Bank.PROTECTED_FROM.feet());
        return Stations.split(stations, depths);
    }

    /** The job's own way, else upright under 5 ft and sloped where it is deeper. */
    private static Bank bank(Site site, TrenchSize size, double deepest) {
        boolean deep = Bank.isProtectedAt(deepest);
        Protection protection = size.protection().orElse(deep ? Protection.SLOPED : Protection.UPRIGHT);
        return bank(site, protection);
    }

    static Bank bank(Site site, Protection protection) {
        if (protection == Protection.SLOPED || protection == Protection.BENCHED) {
            return Bank.cutBack(site.soil(), protection);
        }
        String source = "the bank stands upright, " + protection.name().toLowerCase(Locale.ROOT);
        return new Bank(
                protection,
                Listed.of("s", "side slope, run for each rise", 0, Unit.FOOT_PER_FOOT, source),
                Bank.soil(site),
                Optional.empty());
    }
}
