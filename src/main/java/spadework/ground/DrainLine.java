// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.TeeAt;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.water.DrainLength;
import spadework.water.DrainStretch;
import spadework.water.Leg;
import spadework.water.Pipes;

/** A footing drain laid along its walls: how high its pipe lies over the trench's bottom at each of them. */
public final class DrainLine {
    private final Job job;
    private final FootingDrain drain;
    private final Pipe pipe;
    private final List<Leg> legs;
    private final double wallFeet;
    private final double pipeFeet;
    private final Optional<Double> topAtStart;
    private final Optional<Double> topAtEnd;

    DrainLine(Job job, FootingDrain drain, Pipe pipe) {
        this.job = job;
        this.drain = drain;
        this.pipe = pipe;
        this.legs = Leg.of(job, drain);
        this.wallFeet =
                legs.stream().mapToDouble(leg -> leg.wall().length().feet()).sum();
        this.pipeFeet = DrainLength.of(job, drain).number();
        Optional<Double> start =
                drain.startGrade().map(grade -> below(grade, legs.get(0).depthIn()));
        Optional<Double> end = drain.endGrade()
                .map(grade -> below(grade, legs.get(legs.size() - 1).depthOut()));
        this.topAtStart = start.or(() -> end);
        this.topAtEnd = end.or(() -> start);
    }

    private static double below(Length grade, Length depth) {
        return grade.feet() - depth.feet();
    }

    /** The stone at each wall, by the wall's label. Half of a corner at which the drain closes lies at each end. */
    Map<String, StoneProfile> profiles() {
        Map<String, StoneProfile> profiles = new LinkedHashMap<>();
        double pipeAt = firstPipe();
        double wallsAt = 0;
        for (Leg leg : legs) {
            profiles.put(leg.wall().label(), profile(leg, wallsAt, pipeAt));
            wallsAt += leg.wall().length().feet();
            pipeAt += leg.wall().length().feet() + gain(leg);
        }
        return profiles;
    }

    /** The pipe that lies before the first wall's start: half of the corner at which the drain closes. */
    private double firstPipe() {
        double gains = legs.stream().mapToDouble(this::gain).sum();
        return (pipeFeet - wallFeet - gains) / 2;
    }

    /**
     * The pipe before each wall, by the wall's label: two stretches where its tee lies there, none where a level is not
     * known.
     */
    public static Map<String, List<DrainStretch>> stretches(Job job, PriceBook book, FootingDrain drain) {
        return new DrainLine(job, drain, Pipes.of(drain, book)).stretches();
    }

    private Map<String, List<DrainStretch>> stretches() {
        Map<String, List<DrainStretch>> stretches = new LinkedHashMap<>();
        double pipeAt = firstPipe();
        for (Leg leg : legs) {
            stretches.put(leg.wall().label(), stretches(leg, pipeAt));
            pipeAt += leg.wall().length().feet() + gain(leg);
        }
        return stretches;
    }

    private List<DrainStretch> stretches(Leg leg, double pipeAt) {
        List<Double> places = List.copyOf(places(leg, pipeAt));
        List<DrainStretch> stretches = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            double from = places.get(i - 1);
            double to = places.get(i);
            boolean turned = drain.teeAt() == TeeAt.START
                    || (drain.teeAt() == TeeAt.MIDDLE && pipeAt + (from + to) / 2 > pipeFeet / 2);
            Optional<Double> high = invert((pipeAt + (turned ? to : from)) / pipeFeet);
            Optional<Double> low = invert((pipeAt + (turned ? from : to)) / pipeFeet);
            if (high.isPresent() && low.isPresent()) {
                stretches.add(new DrainStretch(
                        Length.ofFeet(to - from), Length.ofFeet(high.get()), Length.ofFeet(low.get())));
            }
        }
        return stretches;
    }

    /** The two ends of a wall as the drain passes them, feet from the first, and the tee if it lies between. */
    private TreeSet<Double> places(Leg leg, double pipeAt) {
        double length = leg.wall().length().feet();
        TreeSet<Double> places = new TreeSet<>(List.of(0.0, length));
        double tee = pipeFeet / 2 - pipeAt;
        if (drain.teeAt() == TeeAt.MIDDLE && tee > 1e-9 && tee < length - 1e-9) {
            places.add(tee);
        }
        return places;
    }

    /** What the pipe's center line gains at the corner after a wall: p + B ÷ 2 of both walls, taken off inside. */
    private double gain(Leg leg) {
        if (leg.corner().isEmpty()) {
            return 0;
        }
        Corner corner = leg.corner().get();
        double both = offset(job.getWall(corner.first().wall()))
                + offset(job.getWall(corner.second().wall()));
        return corner.kind() == CornerKind.OUTSIDE ? both : -both;
    }

    private static double offset(Wall wall) {
        return wall.footing().projection().feet() + wall.digging().bottomWidth().feet() / 2;
    }

    private StoneProfile profile(Leg leg, double wallsAt, double pipeAt) {
        double length = leg.wall().length().feet();
        double tf = leg.wall().footing().thickness().feet();
        double shell = (pipe.outside().feet() - pipe.inside().feet()) / 2;
        List<double[]> under = new ArrayList<>();
        for (double place : places(leg, pipeAt)) {
            Optional<Double> top = footingTop((wallsAt + place) / wallFeet);
            Optional<Double> invert = invert((pipeAt + place) / pipeFeet);
            if (top.isEmpty() || invert.isEmpty()) {
                return StoneProfile.of(
                        false, tf, pipe.outside().feet(), List.of(new double[] {0, StoneProfile.BEDDING}, new double[] {
                            length, StoneProfile.BEDDING
                        }));
            }
            under.add(new double[] {leg.backward() ? length - place : place, invert.get() - shell - (top.get() - tf)});
        }
        if (leg.backward()) {
            Collections.reverse(under);
        }
        return StoneProfile.of(true, tf, pipe.outside().feet(), under);
    }

    /** Level of the footing's top: straight between measured ends, level where only one was measured. */
    private Optional<Double> footingTop(double share) {
        return topAtStart.map(low -> low + (topAtEnd.orElse(low) - low) * share);
    }

    private Optional<Double> invert(double share) {
        if (drain.teeAt() == TeeAt.MIDDLE) {
            return share <= 0.5
                    ? drain.startInvert().flatMap(low -> drain.teeInvert().map(high -> between(low, high, share * 2)))
                    : drain.teeInvert()
                            .flatMap(low -> drain.endInvert().map(high -> between(low, high, share * 2 - 1)));
        }
        return drain.startInvert().flatMap(low -> drain.endInvert().map(high -> between(low, high, share)));
    }

    private static double between(Length from, Length to, double share) {
        return from.feet() + (to.feet() - from.feet()) * share;
    }
}
