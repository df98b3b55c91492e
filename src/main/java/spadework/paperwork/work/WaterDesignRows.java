// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.work.MeasuredRows.Named;
import spadework.water.Network;
import spadework.water.Range;
import spadework.water.Reach;
import spadework.water.SumpDesign;
import spadework.water.SumpInflow;
import spadework.working.Worked;
import spadework.working.Working;

/** The checked design of the pipes: a row for each reach and sump, and every figure of it with its working. */
public final class WaterDesignRows {
    private final Dossier dossier;
    private final PaperWords terms;
    private final Network network;

    public WaterDesignRows(Dossier dossier) {
        this.dossier = dossier;
        this.terms = dossier.terms();
        this.network = Network.of(dossier.job(), dossier.book());
    }

    /** A row for each reach that runs by its own fall. */
    public List<PipeDesignRow> rows() {
        return network.reaches().stream()
                .filter(reach -> !reach.into().isEmpty())
                .map(this::row)
                .toList();
    }

    /** What each sump has to be, in a sentence. */
    public List<String> sumps() {
        return designs().stream().map(this::sentence).toList();
    }

    /** Every figure with its working, for the contractor. */
    public List<MeasuredRow> figures() {
        List<Named> numbers = new ArrayList<>();
        for (Reach reach : network.reaches()) {
            reach.fall().ifPresent(fall -> add(numbers, reach.label(), "slope", fall.slope()));
            reach.flow().full().ifPresent(full -> {
                add(numbers, reach.label(), "capacity", full.gpm());
                add(numbers, reach.label(), "speed", full.velocity());
            });
            reach.flow().inflow().ifPresent(inflow -> add(numbers, reach.label(), "inflow", inflow.high()));
            reach.flow().share().ifPresent(share -> add(numbers, reach.label(), "share", share));
            reach.cover().start().ifPresent(cover -> add(numbers, reach.label(), "coverstart", cover));
            reach.cover().end().ifPresent(cover -> add(numbers, reach.label(), "coverend", cover));
        }
        for (SumpDesign sump : designs()) {
            add(numbers, sump.label(), "pump", sump.needed());
            sump.head().ifPresent(head -> add(numbers, sump.label(), "head", head.total()));
            add(numbers, sump.label(), "storage", sump.storage());
            sump.shortestCycle().ifPresent(cycle -> add(numbers, sump.label(), "cycle", cycle));
        }
        return MeasuredRows.of(terms.get("water.heading"), numbers);
    }

    private void add(List<Named> numbers, String label, String what, Working working) {
        String key = "water." + what;
        numbers.add(new Named(label + "." + what, terms.get(key) + ", " + label, working));
    }

    private List<SumpDesign> designs() {
        List<SumpDesign> designs = new ArrayList<>();
        for (Outlet outlet : dossier.job().water().outlets()) {
            if (outlet.kind() == OutletKind.SUMP) {
                SumpInflow.of(dossier.job(), network, outlet)
                        .map(inflow -> SumpDesign.of(dossier.job(), dossier.book(), outlet, inflow))
                        .ifPresent(designs::add);
            }
        }
        return designs;
    }

    private PipeDesignRow row(Reach reach) {
        return new PipeDesignRow(
                reach.label(),
                reach.fall()
                        .map(fall -> terms.get(
                                "water.row.slope",
                                "slope",
                                percent(fall.slope()),
                                "least",
                                percent(reach.leastSlope())))
                        .orElse(""),
                reach.flow()
                        .full()
                        .map(full -> terms.get(
                                "water.row.full",
                                "flow",
                                text(full.gpm()),
                                "speed",
                                String.format(
                                        Locale.ROOT,
                                        "%.1f ft/s",
                                        full.velocity().number())))
                        .orElse(""),
                reach.flow().inflow().map(this::range).orElse(""),
                reach.flow().share().map(share -> percentText(share.number())).orElse(""),
                cover(reach));
    }

    private String range(Range inflow) {
        String low = flow(inflow.low());
        String high = flow(inflow.high());
        return low.equals(high) ? high : terms.get("water.row.range", "low", low, "high", high);
    }

    /** A trickle that would print as nothing is told as what it is under. */
    private String flow(Worked gpm) {
        boolean trickle =
                gpm.number() > 0 && Figures.printed(gpm.value(), gpm.unit()).signum() == 0;
        return trickle ? terms.get("water.row.trickle") : text(gpm);
    }

    private String cover(Reach reach) {
        return reach.cover()
                .start()
                .flatMap(start -> reach.cover()
                        .end()
                        .map(end -> terms.get("water.row.cover", "start", over(start), "end", over(end))))
                .orElse("");
    }

    private String sentence(SumpDesign sump) {
        String head = sump.head().map(h -> text(h.total())).orElse(terms.get("water.unmeasured"));
        return terms.get(
                "water.sump",
                "label",
                sump.label(),
                "inflow",
                range(sump.inflow()),
                "pump",
                text(sump.needed()),
                "head",
                head,
                "storage",
                text(sump.storage()),
                "cycle",
                sump.shortestCycle().map(WaterDesignRows::text).orElse(terms.get("water.unmeasured")));
    }

    private static String text(Working working) {
        return Figures.withUnit(working.value(), working.unit());
    }

    /** Where a pipe comes to the open, nothing lies over it. */
    private String over(Working cover) {
        return cover.number() > 0 ? Length.ofFeet(cover.number()).text() : terms.get("water.row.open");
    }

    private static String percent(Working slope) {
        return String.format(Locale.ROOT, "%.1f%%", slope.number() * 100);
    }

    private static String percentText(double percent) {
        return percent < 1 ? "<1%" : String.format(Locale.ROOT, "%.0f%%", percent);
    }
}
