// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.job.FinishSystem;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.SectionNames;
import spadework.pricebook.Measure;
import spadework.pricing.OfferedPrice;
import spadework.pricing.SectionPrice;
import spadework.pricing.UnitPrice;
import spadework.takeoff.Quantity;

/** Prices as proposal and contract print them, and what is included in them. */
public final class PriceRows {
    private PriceRows() {}

    /** The price of each section, and what the small-job minimum adds. */
    public static List<PriceRow> prices(Dossier dossier, OfferedPrice offered) {
        List<PriceRow> rows = new ArrayList<>();
        for (SectionPrice section : offered.sections()) {
            String key = PaperWords.key(section.section().kind().label());
            rows.add(new PriceRow(
                    SectionNames.of(dossier.terms(), section.section().name()),
                    dossier.terms().get("includes." + key),
                    section.price()));
        }
        if (!offered.minimumTopUp().isZero()) {
            rows.add(new PriceRow(
                    dossier.terms().get("minimum.name"),
                    dossier.terms().get("includes.minimum"),
                    offered.minimumTopUp()));
        }
        return rows;
    }

    /** The unit prices agreed in advance. */
    public static List<UnitPriceRow> unitPrices(Dossier dossier, OfferedPrice offered) {
        return offered.unitPrices().stream()
                .map(price -> unitPrice(dossier, price))
                .toList();
    }

    /** One unit price, named by the wall it is about where it stands for an unknown. */
    public static UnitPriceRow unitPrice(Dossier dossier, UnitPrice price) {
        PaperWords terms = dossier.terms();
        String unit = terms.get("unit." + price.unit().symbol());
        return UnitPrice.wallKey(price)
                .map(key -> new UnitPriceRow(
                        terms.get("unknown." + key + ".name", "label", price.homeowner()),
                        terms.get("unknown." + key + ".explanation", "label", price.homeowner()),
                        unit,
                        price.price()))
                .orElseGet(() ->
                        new UnitPriceRow(terms.own(price.name()), terms.own(price.homeowner()), unit, price.price()));
    }

    /** The item of the engineer who looks first. */
    private static final String ENGINEER = "ENG-VISIT";

    /** What the price includes, by what was measured; what several measures call the same stands once. */
    public static List<String> included(Dossier dossier) {
        Set<Measure> measured =
                dossier.takeoff().quantities().stream().map(Quantity::measure).collect(Collectors.toSet());
        // A cement coat is measured as a coating is; where nothing else goes on, no coating is spoken of.
        if (dossier.job().walls().stream()
                .noneMatch(wall -> wall.surface().finish().system() == FinishSystem.COATING)) {
            measured.remove(Measure.COAT);
        }
        Stream<String> first = dossier.takeoff().lines().stream()
                .filter(line -> line.code().equals(ENGINEER))
                .map(line -> dossier.terms().get("included-item.engineer"));
        return Stream.concat(
                        first,
                        Arrays.stream(Measure.values())
                                .filter(measured::contains)
                                .map(measure -> dossier.terms().find("included." + PaperWords.key(measure.trade())))
                                .flatMap(Optional::stream))
                .distinct()
                .toList();
    }
}
