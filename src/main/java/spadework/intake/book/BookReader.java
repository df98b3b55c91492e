// SPDX-License-Identifier: Apache-2.0
package spadework.intake.book;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceFile;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.BaseFile;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Names;
import spadework.intake.value.WrittenQuantity;
import spadework.measure.Unit;
import spadework.pricebook.Assembly;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.spelling.FormerSpelling;

/** Reads price-book.json, on its own or on top of the bundled book. */
public final class BookReader {
    private static final ValueKind<WrittenQuantity> DENSITY = WrittenQuantity.in(Unit.TON_PER_CUBIC_YARD, "0.5", "3");
    private static final ValueKind<WrittenQuantity> TRUCK = WrittenQuantity.in(Unit.CUBIC_YARD, "1", "100");

    private final ItemReader itemReader;

    /** Makes a reader that checks crews and machines against the company's. */
    public BookReader(Names crews, Names machines) {
        itemReader = new ItemReader(crews, machines);
    }

    /** Reads a book that stands alone. */
    public PriceBook read(SourceNode root) {
        return book(root, BaseFile.none(), Set.of());
    }

    /** Reads a book that starts from the bundled one. */
    public PriceBook read(SourceNode root, SourceNode bundled) {
        return book(root, BaseFile.of(book(bundled, BaseFile.none(), codes(root))), Set.of());
    }

    /** True for a book that only adds to the bundled one, or changes it. */
    public static boolean startsFromBundled(SourceNode root) {
        SourceNode start = root.at("startsFrom");
        return start.json() != null
                && start.json().isTextual()
                && start.json().textValue().equals("default");
    }

    /** The codes of a book's items and assemblies, as far as they can be read. */
    private static Set<String> codes(SourceNode root) {
        Set<String> codes = new HashSet<>();
        for (String list : List.of("items", "assemblies")) {
            SourceNode named = root.at(list);
            for (int i = 0; named.json() != null && i < named.json().size(); i++) {
                codes.add(FormerSpelling.currentCode(
                        named.json().path(i).path("code").asText()));
            }
        }
        return codes;
    }

    private PriceBook book(SourceNode root, BaseFile<PriceBook> base, Set<String> replaced) {
        return ValueKind.object(fields -> book(fields, base, replaced)).read(root);
    }

    private PriceBook book(ObjectFields fields, BaseFile<PriceBook> base, Set<String> replaced) {
        fields.find("$schema", Texts.TEXT);
        fields.find("startsFrom", Choices.words(List.of("default")));
        Map<String, LineItem> items = new LinkedHashMap<>(base.orElse(PriceBook::items, Map.of()));
        items.putAll(items(fields, base, replaced));
        Map<String, Assembly> assemblies = new LinkedHashMap<>(base.orElse(PriceBook::assemblies, Map.of()));
        assemblies.putAll(assemblies(fields, items, replaced));
        return new PriceBook(
                base.value(fields, "title", Texts.LABEL, PriceBook::title),
                base.value(fields, "dated", CalendarDates.DATE, PriceBook::dated),
                items,
                assemblies,
                base.value(fields, "earth", EarthFactorReader.GROUPS, PriceBook::earth),
                base.value(fields, "stoneTonsPerCubicYard", number(DENSITY), PriceBook::stoneTonsPerCubicYard),
                base.value(fields, "truckCubicYards", number(TRUCK), PriceBook::truckCubicYards));
    }

    private Map<String, LineItem> items(ObjectFields fields, BaseFile<PriceBook> base, Set<String> replaced) {
        ValueKind<Map<String, LineItem>> kind = new ValueKind<>("[{…}]", node -> itemReader.read(node, replaced));
        return base.value(fields, "items", kind, whole -> Map.of());
    }

    private static Map<String, Assembly> assemblies(
            ObjectFields fields, Map<String, LineItem> items, Set<String> replaced) {
        boolean complete =
                fields.node().sheet().isSound(SourceFile.child(fields.node().pointer(), "items"));
        AssemblyReader reader = new AssemblyReader(items, complete);
        ValueKind<Map<String, Assembly>> kind = new ValueKind<>("[{…}]", node -> reader.read(node, replaced));
        return fields.get("assemblies", kind, Map.of());
    }

    private static ValueKind<Double> number(ValueKind<WrittenQuantity> kind) {
        return new ValueKind<>(kind.example(), node -> kind.read(node).number().doubleValue());
    }
}
