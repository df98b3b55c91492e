// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.buying;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.buying.PurchaseOrder;
import spadework.finding.Finding;
import spadework.job.Downspout;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.job.Water;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;
import spadework.wording.Wording;

/** What the lines of an order do not say: sizes that a supplier has to know, and parts that no line has. */
final class OrderNotes {
    private static final Wording WORDS = Wording.beside(OrderNotes.class);
    private static final Set<Measure> ROOF = Set.of(Measure.ROOF_PIPE, Measure.ROOF_BEND, Measure.DOWNSPOUT);
    private static final Pattern TEE = Pattern.compile("(?iu)\\btees?\\b");

    private final Dossier dossier;
    private final List<LineItem> items;

    OrderNotes(Dossier dossier, PurchaseOrder order) {
        this.dossier = dossier;
        this.items = order.deliveries().stream()
                .flatMap(delivery -> delivery.lines().stream())
                .map(line -> dossier.book().get(line.code()))
                .toList();
    }

    /** Basin and pump of each sump that the order has parts of. */
    List<String> sizes() {
        return has(Set.of(Measure.SUMP)) ? sumps().flatMap(OrderNotes::size).toList() : List.of();
    }

    private static Stream<String> size(Outlet sump) {
        Optional<Length> across = sump.pit().flatMap(SumpPit::diameter);
        Optional<Length> deep = sump.pit().flatMap(SumpPit::depth);
        Optional<String> flow = sump.pit()
                .flatMap(SumpPit::pumpFlow)
                .map(rate -> Figures.inWorking(BigDecimal.valueOf(rate.gallonsPerMinute())));
        Optional<Length> head = sump.pit().flatMap(SumpPit::pumpHead);
        String basin = across.isPresent() && deep.isPresent()
                ? WORDS.get(
                        "size.basin",
                        sump.label(),
                        across.get().text(),
                        deep.get().text())
                : WORDS.get("size.basin-open", sump.label());
        String pump = flow.isPresent() && head.isPresent()
                ? WORDS.get("size.pump", sump.label(), flow.get(), head.get().text())
                : WORDS.get("size.pump-open", sump.label());
        return Stream.of(basin, pump);
    }

    /** Parts that the work takes and that nobody counted; each on the order that has the pipe they belong to. */
    List<String> open() {
        List<String> open = new ArrayList<>();
        if (has(ROOF) && !hasTees()) {
            dossier.job().water().roofLines().stream()
                    .flatMap(line -> tees(line).stream())
                    .forEach(open::add);
        }
        if (has(Set.of(Measure.SUMP_DISCHARGE))) {
            sumps().flatMap(sump -> discharge(sump).stream()).forEach(open::add);
        }
        if (has(Set.of(Measure.SUMP))) {
            dossier.findings().site().stream()
                    .filter(OrderNotes::isUnpaidPart)
                    .map(finding -> WORDS.get("open." + finding.id(), finding.about()))
                    .forEach(open::add);
        }
        return open;
    }

    /** The first downspout starts its line; each further one comes in from the side. */
    private Optional<String> tees(SolidRun line) {
        Water water = dossier.job().water();
        List<String> spouts = water.downspouts().stream()
                .filter(spout -> spout.into().equals(line.label()))
                .map(Downspout::label)
                .toList();
        return spouts.size() < 2
                ? Optional.empty()
                : Optional.of(WORDS.get("open.tees", line.label(), String.join(", ", spouts)));
    }

    private static Optional<String> discharge(Outlet sump) {
        return sump.discharge()
                .filter(Length::isPositive)
                .map(run -> sump.pit()
                        .flatMap(SumpPit::lift)
                        .map(lift -> WORDS.get("open.discharge", sump.label(), run.text(), lift.text()))
                        .orElseGet(() -> WORDS.get("open.discharge-rise", sump.label(), run.text())));
    }

    private static boolean isUnpaidPart(Finding finding) {
        return Set.of("sump-lead", "sump-riser").contains(finding.id())
                && !finding.values().containsKey("paidBy");
    }

    private Stream<Outlet> sumps() {
        return dossier.job().water().outlets().stream().filter(outlet -> outlet.kind() == OutletKind.SUMP);
    }

    private boolean has(Set<Measure> measures) {
        return items.stream()
                .anyMatch(item -> item.follows().filter(measures::contains).isPresent());
    }

    private boolean hasTees() {
        return items.stream()
                .anyMatch(item -> item.section() == Section.ROOF_WATER
                        && TEE.matcher(item.name()).find());
    }
}
