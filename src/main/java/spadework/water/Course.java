// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.List;
import java.util.Optional;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;

/**
 * Where a reach lies, before anybody asks what flows in it.
 *
 * @param startAt where the job states the invert at which water comes in
 * @param endAt where it states the invert at which water leaves
 */
public record Course(
        String label,
        String run,
        ReachKind kind,
        String into,
        Pipe pipe,
        Worked length,
        int bends,
        List<Station> stations,
        String startAt,
        String endAt,
        Listed leastSlope) {

    Station first() {
        return stations.get(0);
    }

    Station last() {
        return stations.get(stations.size() - 1);
    }

    Optional<Fall> fall() {
        if (first().invert().isEmpty() || last().invert().isEmpty() || !(length.number() > 0)) {
            return Optional.empty();
        }
        Given start =
                invert("I0", "invert where water comes in", first().invert().get(), startAt);
        Given end = invert("I1", "invert where water leaves", last().invert().get(), endAt);
        Worked drop = Worked.of(
                "F", "fall", start.number() - end.number(), Unit.FOOT, new Formula("I0 − I1", "levels"), start, end);
        Worked slope = Worked.of(
                "S",
                "slope",
                drop.number() / length.number(),
                Unit.FOOT_PER_FOOT,
                new Formula("F ÷ " + length.symbol(), "fall over length"),
                drop,
                length);
        return Optional.of(new Fall(start, end, drop, slope));
    }

    /** Soil over the pipe at a station where invert and ground are known. */
    Optional<Worked> cover(Station station) {
        if (station.invert().isEmpty() || station.ground().isEmpty()) {
            return Optional.empty();
        }
        Given ground = Given.of(
                "G",
                "level of the ground",
                station.ground().get().feet(),
                Unit.FOOT,
                "grade of run " + run + ", along the walls by their depths");
        Given invert = invert("I", "invert", station.invert().get(), "inverts of run " + run);
        Listed inside = PipeConstants.inside(pipe);
        Listed outside =
                Listed.of("OD", "outside diameter of the pipe", pipe.outside().feet(), Unit.FOOT, pipe.standard());
        double value = ground.number() - invert.number() - (inside.number() + outside.number()) / 2;
        return Optional.of(Worked.of(
                "c",
                "cover over the pipe",
                value,
                Unit.FOOT,
                new Formula("G − I − (D + OD) ÷ 2", "levels; the pipe's wall is (OD − D) ÷ 2"),
                ground,
                invert,
                inside,
                outside));
    }

    private static Given invert(String symbol, String name, Length level, String pointer) {
        return Given.of(symbol, name, level.feet(), Unit.FOOT, pointer);
    }
}
