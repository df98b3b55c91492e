// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.Corner;
import spadework.measure.Unit;
import spadework.pricebook.Pipe;
import spadework.takeoff.wall.Trenches;
import spadework.takeoff.wall.WallMeasures;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Heights of the stone over the trench's bottom, with workings: 6 in over footing or pipe, whichever is higher. */
final class StoneHeights {
    private static final String FORMULA = "max(tf + 6 ÷ 12, u + OD + 6 ÷ 12)";

    private StoneHeights() {}

    /** The height of a stone whose top is level. */
    static Worked level(WallMeasures m, StoneProfile profile, Pipe pipe) {
        return at("hs", m, highest(profile), pipe);
    }

    /** The height at one station. */
    static Worked at(String symbol, WallMeasures m, StoneStation station, Pipe pipe) {
        Listed outside = StoneEnvelope.outside(pipe);
        Given under = Given.of(
                "u",
                "from the trench's bottom to the pipe's underside",
                station.under(),
                Unit.FOOT,
                "levels of pipe and ground at wall " + m.wall().label() + "; 2 in of stone where they are missing");
        return Worked.of(
                symbol,
                "height of the stone above the trench's bottom",
                station.height(),
                Unit.FOOT,
                new Formula(FORMULA, StoneEnvelope.CODE),
                m.footing(),
                under,
                outside);
    }

    /** The height at a corner, of the two walls the higher. */
    static Worked atCorner(Trenches trenches, Corner corner, Pipe pipe) {
        StoneProfile first = trenches.stoneAt(corner.first().wall());
        StoneProfile second = trenches.stoneAt(corner.second().wall());
        boolean here = first.heightAt(corner.first().atEnd())
                >= second.heightAt(corner.second().atEnd());
        return here
                ? at(
                        "hs",
                        trenches.at(corner.first().wall()),
                        end(first, corner.first().atEnd()),
                        pipe)
                : at(
                        "hs",
                        trenches.at(corner.second().wall()),
                        end(second, corner.second().atEnd()),
                        pipe);
    }

    /** The mean height along a wall. */
    static Worked mean(WallMeasures m, StoneProfile profile, Pipe pipe) {
        if (profile.isLevel()) {
            return level(m, profile, pipe);
        }
        List<Working> inputs = new ArrayList<>(List.of(m.length()));
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (int i = 1; i < profile.stations().size(); i++) {
            StoneStation from = profile.stations().get(i - 1);
            StoneStation to = profile.stations().get(i);
            inputs.add(Given.of(
                    "l" + i,
                    "from station to station",
                    to.at() - from.at(),
                    Unit.FOOT,
                    "stations of the pipe along wall " + m.wall().label()));
            inputs.add(at("ha" + i, m, from, pipe));
            inputs.add(at("hb" + i, m, to, pipe));
            formula.append(formula.isEmpty() ? "" : " + ").append("l" + i + " × (ha" + i + " + hb" + i + ") ÷ 2");
            sum += (to.at() - from.at()) * (from.height() + to.height()) / 2;
        }
        return Worked.of(
                "hs",
                "mean height of the stone above the trench's bottom",
                sum / m.length().number(),
                Unit.FOOT,
                new Formula("(" + formula + ") ÷ L", "straight from station to station"),
                inputs.toArray(Working[]::new));
    }

    private static StoneStation end(StoneProfile profile, boolean atEnd) {
        return profile.stations().get(atEnd ? profile.stations().size() - 1 : 0);
    }

    private static StoneStation highest(StoneProfile profile) {
        return profile.stations().stream()
                .max((a, b) -> Double.compare(a.height(), b.height()))
                .orElseThrow();
    }
}
