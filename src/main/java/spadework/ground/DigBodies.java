// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Protection;
import spadework.job.Site;
import spadework.job.SolidRun;
import spadework.job.TestPit;
import spadework.job.TrenchSize;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.trench.Bank;

/** Everything that is dug on a job. What people are kept safe in, pay for and see drawn is looked up here. */
public final class DigBodies {
    /** How far a window well reaches out from the wall as it is usual, feet; common practice, no source. */
    public static final double WELL_OUT = 3;

    /** The same along the wall, and down; common practice, no source. */
    private static final double WELL_WIDTH = 4;

    private static final double WELL_DEPTH = 3;

    private DigBodies() {}

    public static List<DigBody> of(Job job) {
        Site site = job.site();
        List<DigBody> bodies = new ArrayList<>();
        job.walls().forEach(wall -> bodies.add(wall(site, wall)));
        job.walls().stream().filter(wall -> wall.windowWells() > 0).forEach(wall -> bodies.add(well(site, wall)));
        job.water().mains().forEach(main -> bodies.add(main(job, main)));
        job.water().roofLines().forEach(line -> bodies.add(roofLine(job, line)));
        job.water().drains().forEach(drain -> lead(job, drain).ifPresent(bodies::add));
        for (Outlet outlet : job.water().outlets()) {
            if (outlet.kind() == OutletKind.SUMP) {
                bodies.add(SumpHole.of(job, outlet).body());
                discharge(job, outlet).ifPresent(bodies::add);
            }
        }
        site.testPits().forEach(pit -> bodies.add(testPit(site, pit)));
        return bodies;
    }

    /** The trench at a wall; its width reaches from the wall's face over the footing. */
    public static DigBody wall(Site site, Wall wall) {
        double tf = wall.footing().thickness().feet();
        double width = wall.footing().projection().feet()
                + wall.digging().bottomWidth().feet();
        Bank bank = Bank.of(site, wall);
        List<BodyStation> ends = List.of(
                new BodyStation(0, wall.depthStart().feet() + tf, Optional.empty()),
                new BodyStation(wall.length().feet(), wall.depthEnd().feet() + tf, Optional.empty()));
        return new DigBody(
                BodyKind.WALL,
                wall.label(),
                Stations.split(ends, bank.line(wall.deepestTrench()).steps()),
                width,
                bank,
                DepthFrom.MEASURED,
                Optional.empty(),
                true);
    }

    /** The trench of a main; entered unless all of it is dug with a wall's trench or a hole. */
    public static DigBody main(Job job, SolidRun run) {
        DigBody body = PipeTrench.main(job, run);
        return RunOverlap.ofMain(job, run)
                .filter(once -> once.isAllOf(body))
                .map(once -> body.within())
                .orElse(body);
    }

    /** The trench of a roof line; entered as a main's is. */
    public static DigBody roofLine(Job job, SolidRun run) {
        DigBody body = PipeTrench.of(job.site(), BodyKind.ROOF_LINE, run);
        return RunOverlap.ofRoofLine(job, run)
                .filter(once -> once.isAllOf(body))
                .map(once -> body.within())
                .orElse(body);
    }

    /**
     * The trench of a drain's lead into a basin outside, entered as a main's is; empty where there is none, or where
     * nobody wrote how far the basin lies from the footing.
     */
    public static Optional<DigBody> lead(Job job, FootingDrain drain) {
        return SumpLead.of(job, drain)
                .map(body -> RunOverlap.ofLead(job, drain)
                        .filter(once -> once.isAllOf(body))
                        .map(once -> body.within())
                        .orElse(body));
    }

    /** The trench of a sump's discharge pipe, entered as a main's is; empty where it has no length. */
    public static Optional<DigBody> discharge(Job job, Outlet outlet) {
        return discharge(job.site(), outlet)
                .map(body -> RunOverlap.ofDischarge(job, outlet)
                        .filter(once -> once.isAllOf(body))
                        .map(once -> body.within())
                        .orElse(body));
    }

    /** The trench of a sump's discharge pipe; empty where it has no length. */
    static Optional<DigBody> discharge(Site site, Outlet outlet) {
        TrenchSize size = outlet.dischargeTrench().orElse(PipeTrench.USUAL_DISCHARGE);
        DepthFrom from = outlet.dischargeTrench().isPresent() ? DepthFrom.TYPED : DepthFrom.USUAL;
        return outlet.discharge()
                .filter(Length::isPositive)
                .map(length -> PipeTrench.typed(site, BodyKind.DISCHARGE, outlet.label(), length.feet(), size, from));
    }

    /**
     * What the wells of a wall take beyond its trench: each as wide as usual, from the trench's edge at the well's
     * bottom out to the well's.
     */
    public static DigBody well(Site site, Wall wall) {
        double depth = Math.min(WELL_DEPTH, wall.deepestTrench().feet());
        Bank bank = Bank.of(site, wall);
        double reach = wall.footing().projection().feet()
                + wall.digging().bottomWidth().feet()
                + bank.line(wall.deepestTrench()).out(wall.deepestTrench().feet() - depth);
        return new DigBody(
                BodyKind.WINDOW_WELL,
                wall.label(),
                List.of(
                        new BodyStation(0, depth, Optional.empty()),
                        new BodyStation(WELL_WIDTH * wall.windowWells(), depth, Optional.empty())),
                Math.max(0, WELL_OUT - reach),
                PipeTrench.bank(site, Protection.UPRIGHT),
                DepthFrom.USUAL,
                Optional.empty(),
                false);
    }

    public static DigBody testPit(Site site, TestPit pit) {
        TrenchSize size = new TrenchSize(pit.width(), pit.depth());
        return PipeTrench.typed(
                site, BodyKind.TEST_PIT, pit.label(), pit.length().feet(), size, DepthFrom.MEASURED);
    }
}
