// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.measure.Percent;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.WallFace;

/** From quantities to line items: what the job chose, else the book's standard items, else what was put in by hand. */
public final class LineChoice {
    private LineChoice() {}

    static List<TakeoffLine> lines(Job job, PriceBook book, List<Driven> measured, List<TakeoffSection> sections) {
        List<TakeoffLine> lines = new ArrayList<>();
        Map<Measure, List<LineItem>> standard = book.standard();
        Map<TakeoffSection, List<Driven>> bySection = measured.stream()
                .collect(Collectors.groupingBy(driven -> driven.quantity().section()));
        for (Driven driven : measured) {
            List<Driven> here = bySection.get(driven.quantity().section());
            List<LineItem> usual = standard.getOrDefault(driven.quantity().measure(), List.of());
            List<LineItem> items = driven.codes().isEmpty()
                    ? HandItems.inPlaceOf(usual, driven, book)
                    : driven.codes().stream().map(book::get).toList();
            for (LineItem item : items) {
                lines.add(measuredLine(job, driven, item, here));
            }
        }
        for (ExtraItem extra : job.items()) {
            TakeoffSection section = section(extra, sections);
            book.findAssembly(extra.code())
                    .ifPresentOrElse(
                            assembly -> lines.addAll(AssemblyLines.of(job, book, extra, assembly, section)),
                            () -> lines.add(extraLine(job, book, extra, section)));
        }
        return lines;
    }

    /** @param measured all that was measured in the same section */
    static TakeoffLine measuredLine(Job job, Driven driven, LineItem item, List<Driven> measured) {
        Quantity quantity = driven.quantity();
        Optional<BigDecimal> bought = item.material().map(material -> bought(material, quantity, measured));
        return new TakeoffLine(
                item.code(),
                quantity.section(),
                quantity.printed(),
                quantity.unit(),
                Optional.of(quantity),
                driven.stretches(),
                bought,
                item.material().map(material -> waste(job, quantity, material)),
                "",
                Optional.empty());
    }

    /** Net material for a quantity: its own measure in the same section where there is one, else so much a unit. */
    private static BigDecimal bought(Material material, Quantity quantity, List<Driven> measured) {
        return material.measured()
                .flatMap(measure -> measured.stream()
                        .map(Driven::quantity)
                        .filter(other ->
                                other.measure() == measure && other.section().equals(quantity.section()))
                        .map(Quantity::value)
                        .findFirst())
                .orElseGet(() -> quantity.value().multiply(material.each()));
    }

    private static Percent waste(Job job, Quantity quantity, Material material) {
        return material.measured().equals(Optional.of(Measure.COAT_GALLONS))
                ? WallFace.waste(job.getWall(quantity.section().label()).kind())
                : material.waste();
    }

    private static TakeoffSection section(ExtraItem extra, List<TakeoffSection> sections) {
        return sections.stream()
                .filter(s -> s.label().equals(extra.section()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no section " + extra.section()));
    }

    private static TakeoffLine extraLine(Job job, PriceBook book, ExtraItem extra, TakeoffSection section) {
        LineItem item = book.get(extra.code());
        BigDecimal quantity =
                extra.quantity().orElseThrow(() -> new IllegalArgumentException("no quantity of " + extra.code()));
        return new TakeoffLine(
                item.code(),
                section,
                quantity,
                item.unit(),
                Optional.empty(),
                Conditions.in(job, section),
                item.material().map(material -> NetMaterial.of(book, item, quantity)),
                item.material().map(Material::waste),
                extra.reason(),
                Optional.empty());
    }
}
