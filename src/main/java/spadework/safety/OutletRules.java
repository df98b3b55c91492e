package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;
import static spadework.safety.Found.stop;

import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.Downspout;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SolidRun;
import spadework.measure.Length;

/** Where the water may go. */
final class OutletRules implements Rule {
    private static final Length FROM_LOT_LINE = Length.ofFeet(5);
    private static final Length FROM_HOUSE = Length.ofFeet(10);
    private static final String LOCAL = "local discharge ordinances, as Warrenville IL (5 ft from a lot line)";

    @Override
    public List<Finding> check(Facts facts) {
        Job job = facts.job();
        List<Finding> found = new ArrayList<>();
        for (Downspout downspout : job.water().downspouts()) {
            boolean solidLine = job.water().roofLines().stream()
                    .map(SolidRun::label)
                    .anyMatch(downspout.into()::equals);
            if (!solidLine) {
                found.add(stop("roof-into-drain", downspout.label(),
                        "Building America Solution Center, foundation drains", "into", downspout.into()));
            }
        }
        for (Outlet outlet : job.water().outlets()) {
            found.addAll(outlet(outlet));
        }
        if (!job.water().outlets().isEmpty()) {
            found.add(must("never-sanitary", "", "local sewer ordinances; IPC 1113 (from memory)"));
        }
        return found;
    }

    private static List<Finding> outlet(Outlet outlet) {
        List<Finding> found = new ArrayList<>();
        if (outlet.kind() == OutletKind.APPROVED_STORM && outlet.permission().isEmpty()) {
            found.add(stop("storm-unpermitted", outlet.label(), "IRC R405.1, approved drainage system"));
        }
        if (outlet.kind() == OutletKind.SUMP) {
            found.add(must("sump", outlet.label(), "IRC P3303.1.2; IPC 1113.1.2"));
        }
        if (outlet.kind() != OutletKind.APPROVED_STORM) {
            outlet.fromLotLine().ifPresentOrElse(
                    distance -> found.addAll(Found.when(distance.compareTo(FROM_LOT_LINE) < 0,
                            must("outlet-near-line", outlet.label(), LOCAL, "distance", distance.text()))),
                    () -> found.add(must("outlet-line-unmeasured", outlet.label(), LOCAL)));
            outlet.fromHouse().ifPresentOrElse(
                    distance -> found.addAll(Found.when(distance.compareTo(FROM_HOUSE) < 0,
                            advise("outlet-near-house", outlet.label(), Found.PRACTICE, "distance", distance.text()))),
                    () -> found.add(must("outlet-house-unmeasured", outlet.label(), Found.PRACTICE)));
        }
        return found;
    }
}
