// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.Optional;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.SumpPit;
import spadework.measure.FlowRate;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;

/**
 * The one inflow that a sump is sized by: what its pipes bring by the tables, or what was seen to come into a test pit,
 * whichever is more. A pit is watched on one day, so a low figure never lowers the range.
 */
public final class SumpInflow {
    private static final String WETTER = "the wetter of table and test pit; common practice, no source";

    private SumpInflow() {}

    /** In gpm; empty where a part of what the pipes bring is not known. */
    public static Optional<Range> of(Job job, Network network, Outlet outlet) {
        return network.arriving(outlet.label())
                .map(forecast -> observed(outlet)
                        .map(seen -> with(job, outlet, forecast, seen))
                        .orElse(forecast));
    }

    /** What was seen to come into the pit; empty where nobody looked. */
    public static Optional<FlowRate> observed(Outlet outlet) {
        return outlet.pit().flatMap(SumpPit::observedInflow);
    }

    private static Range with(Job job, Outlet outlet, Range forecast, FlowRate seen) {
        Given pit = Given.of(
                "Qp",
                "seen to come into the test pit",
                seen.gallonsPerMinute(),
                Unit.GALLON_PER_MINUTE,
                "/water/outlets/" + job.water().outlets().indexOf(outlet) + "/pit/observedInflow");
        return new Range(
                wetter("arrives at " + outlet.label() + ", low end", forecast.low(), pit, false),
                wetter("arrives at " + outlet.label() + ", high end", forecast.high(), pit, true));
    }

    private static Worked wetter(String name, Worked forecast, Given pit, boolean high) {
        Worked table = forecast.as("Qt");
        double value = high ? Math.max(table.number(), pit.number()) : Math.min(table.number(), pit.number());
        return Worked.of(
                "Q",
                name,
                value,
                Unit.GALLON_PER_MINUTE,
                new Formula((high ? "max" : "min") + "(Qt, Qp)", WETTER),
                table,
                pit);
    }
}
