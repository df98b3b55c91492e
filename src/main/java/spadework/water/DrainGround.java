// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.measure.Length;

/**
 * The places that a footing drain passes, from its start: wall ends and corners, with the ground over them. The ground
 * follows from the walls' depths over the top of the footing, which is taken as straight between the ends at which
 * the ground was measured, and as level where only one was.
 */
public final class DrainGround {
    private final Optional<Double> topAtStart;
    private final Optional<Double> topAtEnd;
    private final double wallFeet;

    private DrainGround(List<Leg> legs, FootingDrain drain) {
        double in = legs.get(0).depthIn().feet();
        double out = legs.get(legs.size() - 1).depthOut().feet();
        Optional<Double> start = drain.startGrade().map(grade -> grade.feet() - in);
        Optional<Double> end = drain.endGrade().map(grade -> grade.feet() - out);
        this.topAtStart = start.or(() -> end);
        this.topAtEnd = end.or(() -> start);
        this.wallFeet =
                legs.stream().mapToDouble(leg -> leg.wall().length().feet()).sum();
    }

    /**
     * The places in order, each with its distance along the pipe's center line. Where a drain goes all round, half of
     * the corner at which it closes belongs to each end.
     */
    static List<Station> stations(Job job, FootingDrain drain) {
        List<Leg> legs = Leg.of(job, drain);
        DrainGround ground = new DrainGround(legs, drain);
        double total = DrainLength.of(job, drain).number();
        double passed = legs.stream()
                .mapToDouble(leg -> leg.wall().length().feet() + gain(job, leg))
                .sum();
        double pipe = (total - passed) / 2;
        double walls = 0;
        List<Station> stations = new ArrayList<>();
        stations.add(ground.station(0, walls, legs.get(0).depthIn(), List.of()));
        for (Leg leg : legs) {
            double half = gain(job, leg) / 2;
            walls += leg.wall().length().feet();
            pipe += leg.wall().length().feet() + half;
            boolean last = stations.size() == legs.size();
            List<Joint> joints = leg.corner().isPresent() ? List.of(Joint.BEND) : List.of();
            stations.add(ground.station(last ? total : pipe, walls, leg.depthOut(), joints));
            pipe += half;
        }
        return stations;
    }

    /** The ground over the place where a drain's water leaves it; empty where it was not measured. */
    public static Optional<Length> atTee(Job job, FootingDrain drain) {
        return switch (drain.teeAt()) {
            case START -> drain.startGrade();
            case END -> drain.endGrade();
            case MIDDLE -> {
                double half = DrainLength.of(job, drain).number() / 2;
                List<Station> toTee = Profile.upTo(stations(job, drain), half);
                yield toTee.get(toTee.size() - 1).ground();
            }
        };
    }

    private static double gain(Job job, Leg leg) {
        return leg.corner().map(corner -> DrainLength.gain(job, corner)).orElse(0.0);
    }

    private Station station(double pipe, double walls, Length depth, List<Joint> joints) {
        double share = wallFeet > 0 ? walls / wallFeet : 0;
        Optional<Length> level =
                topAtStart.map(start -> Length.ofFeet(start + (topAtEnd.orElse(start) - start) * share + depth.feet()));
        return new Station(Length.ofFeet(pipe), Optional.empty(), level, joints);
    }
}
