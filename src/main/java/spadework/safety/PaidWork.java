// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiPredicate;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.pricebook.Measure;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/**
 * Work that findings oblige somebody to pay for, and the line items that carry it.
 *
 * @param findings ids; one that ends in {@code -} stands for all that begin so
 * @param items codes of the line items, the usual one first
 * @param asked how much of the usual one
 * @param measured whether a line of the takeoff carries what one finding asks for, whatever its item
 */
public record PaidWork(
        Set<String> findings, List<String> items, Asked asked, BiPredicate<Finding, TakeoffLine> measured) {

    /** How much of a line item the findings of one kind ask for, in the item's unit. */
    @FunctionalInterface
    public interface Asked {
        BigDecimal of(Job job, Takeoff takeoff, List<Finding> found);
    }

    private static final Asked ONCE = (job, takeoff, found) -> BigDecimal.ONE;
    private static final Asked EACH = (job, takeoff, found) -> BigDecimal.valueOf(found.size());

    /** Every kind of work that a finding can ask for. */
    public static final List<PaidWork> ALL = List.of(
            new PaidWork(Set.of("engineer-", "footing-in-reach", "trench-over-20"), List.of("ENG-VISIT"), ONCE),
            new PaidWork(Set.of("lead-paint"), List.of("LEAD-SAFE"), EACH),
            new PaidWork(Set.of("shield"), List.of("SHIELD-FT", "SHIELD-DAY"), PaidWork::shielded),
            new PaidWork(Set.of("water-in-trench"), List.of("U-PUMP"), ONCE),
            new PaidWork(Set.of("daily-inspection"), List.of("SAFE-CHECK"), ONCE),
            new PaidWork(Set.of("locate-missing", "locate-keep"), List.of("LOCATE-811"), ONCE),
            new PaidWork(Set.of("hand-dig-zone", "hand-dig-trench"), List.of("VAC-LOCATE", "LOCATE-811"), EACH),
            new PaidWork(Set.of("way-in-bridge", "way-in-bridge-low"), List.of("WALK-BRIDGE"), ONCE),
            new PaidWork(Set.of("roots"), List.of("TREE-CARE"), EACH),
            new PaidWork(Set.of("inspection-holds"), List.of("PERMIT"), ONCE),
            new PaidWork(Set.of("outlet-guard"), List.of("OUT-GUARD", "OUT-PAD"), EACH),
            new PaidWork(Set.of("sump"), List.of("SUMP-ELEC"), EACH),
            new PaidWork(
                    Set.of("sump-discharge-trench"),
                    List.of("DISCH-TRENCH"),
                    PaidWork::discharged,
                    PaidWork::digsDischarge),
            new PaidWork(Set.of("sump-lead"), List.of("SUMP-LEAD"), EACH),
            new PaidWork(Set.of("sump-riser"), List.of("SUMP-RISER"), EACH));

    /** By the ids of findings, of which there are not many. */
    private static final Map<String, List<PaidWork>> BY_ID = new ConcurrentHashMap<>();

    public PaidWork {
        findings = Set.copyOf(findings);
        items = List.copyOf(items);
    }

    private PaidWork(Set<String> findings, List<String> items, Asked asked) {
        this(findings, items, asked, (finding, line) -> false);
    }

    /** What findings ask for, each kind of work with those that ask for it. */
    public static Map<PaidWork, List<Finding>> askedBy(List<Finding> findings) {
        Map<PaidWork, List<Finding>> asked = new LinkedHashMap<>();
        for (Finding finding : findings) {
            BY_ID.computeIfAbsent(finding.id(), PaidWork::askedBy)
                    .forEach(work -> asked.computeIfAbsent(work, one -> new ArrayList<>())
                            .add(finding));
        }
        Map<PaidWork, List<Finding>> inOrder = new LinkedHashMap<>();
        ALL.stream().filter(asked::containsKey).forEach(work -> inOrder.put(work, asked.get(work)));
        return inOrder;
    }

    /** What findings of that id ask for. */
    static List<PaidWork> askedBy(String id) {
        return ALL.stream().filter(work -> work.isAskedBy(id)).toList();
    }

    /** Whether findings of that id ask for it. */
    private boolean isAskedBy(String asked) {
        if (findings.contains(asked)) {
            return true;
        }
        for (int end = asked.indexOf('-'); end >= 0; end = asked.indexOf('-', end + 1)) {
            if (findings.contains(asked.substring(0, end + 1))) {
                return true;
            }
        }
        return false;
    }

    /** The shielded feet that are measured; one foot where a finding names a trench that is not measured so. */
    private static BigDecimal shielded(Job job, Takeoff takeoff, List<Finding> found) {
        return takeoff.quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.SHIELD)
                .map(Quantity::printed)
                .reduce(BigDecimal::add)
                .orElse(BigDecimal.ONE);
    }

    private static BigDecimal discharged(Job job, Takeoff takeoff, List<Finding> found) {
        return job.water().outlets().stream()
                .filter(outlet -> outlet.kind() == OutletKind.SUMP)
                .map(Outlet::discharge)
                .flatMap(length -> length.stream())
                .map(length -> BigDecimal.valueOf(length.feet()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Whether a line digs the trench of a sump's discharge pipe as the takeoff measured it. */
    private static boolean digsDischarge(Finding finding, TakeoffLine line) {
        return line.from()
                .filter(quantity -> quantity.measure() == Measure.PIPE_TRENCH)
                .map(Quantity::label)
                .equals(Optional.of(Outlet.dischargeLabel(finding.about())));
    }
}
