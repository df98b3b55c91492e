// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;
import static spadework.safety.Found.must;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spadework.finding.Finding;
import spadework.job.Rain;
import spadework.job.Soil;
import spadework.job.Texture;
import spadework.measure.Digits;
import spadework.water.Permeability;
import spadework.water.PipeConstants;
import spadework.water.Range;
import spadework.water.Reach;
import spadework.water.ReachKind;
import spadework.water.flow.Flow;
import spadework.water.flow.FullPipe;
import spadework.water.flow.Manning;
import spadework.working.Worked;

/** Whether the pipes carry what flows in, and fast enough to stay clean. */
final class LoadRules implements Rule {
    /** Feet a second below which fine sand and silt settle, and below which anything does (ASABE and NRCS; H-08). */
    private static final double WITH_FINES = 1.4;

    private static final double WITHOUT_FINES = 0.5;
    private static final String MANNING = "Manning's formula, full pipe";
    private static final String ROOF =
            "IPC 1106 (roof drainage); the 2012 and 2021 editions differ by 47% for one pipe";

    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>();
        found.addAll(rain(facts));
        found.addAll(catchment(facts));
        found.addAll(beyondTables(facts));
        for (Reach reach : facts.network().reaches()) {
            found.addAll(load(facts, reach));
        }
        slowest(facts).forEach((run, full) -> found.addAll(speed(facts, run, full)));
        return found;
    }

    private static List<Finding> rain(Facts facts) {
        boolean wanted = !facts.job().water().roofLines().isEmpty()
                || !facts.job().water().downspouts().isEmpty()
                || facts.job().site().catchment().isPresent();
        return Found.when(wanted && facts.job().site().rain().isEmpty(), must("rain-missing", "", ROOF));
    }

    private static List<Finding> catchment(Facts facts) {
        return facts
                .job()
                .site()
                .catchment()
                .filter(catchment -> facts.job().water().roofLines().stream()
                        .noneMatch(line -> line.label().equals(catchment.into())))
                .map(catchment -> must("surface-into-drain", catchment.into(), Found.PRACTICE))
                .stream()
                .toList();
    }

    /** Water that runs freely out of soil that is slow by every table. */
    private static List<Finding> beyondTables(Facts facts) {
        Soil soil = facts.job().site().soil();
        boolean drained = !facts.job().water().drains().isEmpty();
        Permeability tables = Permeability.of(soil.texture());
        Permeability taken = Permeability.of(soil.texture(), soil.seepage());
        return Found.when(
                drained && Permeability.isBeyondTables(soil.texture(), soil.seepage()),
                must(
                        "seepage-beyond-tables",
                        "",
                        tables.source(),
                        "texture",
                        soil.texture().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        "tables",
                        Digits.fixed(tables.high(), 2) + " in/h",
                        "taken",
                        Digits.fixed(taken.high(), 1) + " in/h"));
    }

    private static List<Finding> load(Facts facts, Reach reach) {
        boolean dry = reach.flow().inflow().map(in -> in.high().number() <= 0).orElse(false);
        if (dry && reach.kind() == ReachKind.ROOF_LINE) {
            return List.of(must("roof-area-missing", reach.label(), ROOF));
        }
        if (reach.flow().share().isEmpty()) {
            return List.of();
        }
        Worked share = reach.flow().share().get();
        FullPipe full = reach.flow().full().orElseThrow();
        Range inflow = reach.flow().inflow().orElseThrow();
        List<Finding> found = new ArrayList<>();
        if (share.number() > 100 + 1e-9) {
            found.add(must(
                    "over-capacity",
                    reach.label(),
                    MANNING,
                    "flow",
                    Amounts.of(inflow.high()),
                    "capacity",
                    Amounts.of(full.gpm()),
                    "share",
                    Amounts.share(share),
                    "wide",
                    wide(reach, inflow),
                    "steep",
                    steep(reach, inflow)));
        } else if (reach.kind() == ReachKind.ROOF_LINE) {
            Rain rain = facts.job().site().rain().orElseThrow();
            found.add(advise(
                    "roof-share",
                    reach.label(),
                    ROOF,
                    "flow",
                    Amounts.of(inflow.high()),
                    "rain",
                    rain(rain),
                    "source",
                    rain.source(),
                    "capacity",
                    Amounts.of(full.gpm()),
                    "share",
                    Amounts.share(share)));
        } else if (reach.kind() == ReachKind.DRAIN) {
            found.add(advise(
                    "seepage-share",
                    reach.label(),
                    "Darcy and Dupuit; published tables of soil permeability",
                    "low",
                    Amounts.of(inflow.low()),
                    "high",
                    Amounts.of(inflow.high()),
                    "capacity",
                    Amounts.of(full.gpm()),
                    "share",
                    Amounts.share(share)));
        }
        return found;
    }

    private static String rain(Rain rain) {
        return Digits.fixed(rain.intensity().inchesPerHour(), 1) + " in/h";
    }

    private static String wide(Reach reach, Range inflow) {
        Worked cfs = Flow.cfs("Qc", "inflow", inflow.high().as("Qi"));
        Worked inside =
                Manning.diameter(cfs, reach.fall().orElseThrow().slope(), PipeConstants.roughness(reach.pipe()));
        return Amounts.inchesUp(inside.number() * 12);
    }

    private static String steep(Reach reach, Range inflow) {
        Worked cfs = Flow.cfs("Qc", "inflow", inflow.high().as("Qi"));
        return Amounts.slopeUp(
                Manning.slope(cfs, PipeConstants.inside(reach.pipe()), PipeConstants.roughness(reach.pipe()))
                        .number());
    }

    /** The slower side of each drain and main, by its label. */
    private static Map<String, FullPipe> slowest(Facts facts) {
        Map<String, FullPipe> slowest = new LinkedHashMap<>();
        for (Reach reach : facts.network().reaches()) {
            if (reach.kind() == ReachKind.DRAIN || reach.kind() == ReachKind.MAIN) {
                reach.flow().full().ifPresent(full -> slowest.merge(reach.run(), full, LoadRules::slower));
            }
        }
        return slowest;
    }

    private static FullPipe slower(FullPipe one, FullPipe other) {
        return one.velocity().number() <= other.velocity().number() ? one : other;
    }

    private static List<Finding> speed(Facts facts, String run, FullPipe full) {
        double least = facts.job().site().soil().texture() == Texture.GRAVEL ? WITHOUT_FINES : WITH_FINES;
        return Found.when(
                full.velocity().number() < least - 1e-9,
                advise(
                        "slow-drain",
                        run,
                        "ASABE and NRCS practice, 1.4 ft/s with fine sand or silt, else 0.5",
                        "speed",
                        Amounts.of(full.velocity()),
                        "least",
                        Digits.fixed(least, 1) + " ft/s"));
    }
}
