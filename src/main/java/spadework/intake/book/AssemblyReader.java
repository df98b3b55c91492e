// SPDX-License-Identifier: Apache-2.0
package spadework.intake.book;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.intake.source.Excerpt;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Choices;
import spadework.intake.value.Names;
import spadework.intake.value.WrittenQuantity;
import spadework.pricebook.Assembly;
import spadework.pricebook.Driver;
import spadework.pricebook.LineItem;

/** Reads the assemblies of a price book. */
public final class AssemblyReader {
    private final Map<String, LineItem> items;
    private final Names codes;

    /**
     * Makes a reader.
     *
     * @param items of which assemblies may consist
     * @param complete false when an item could not be read, so that a strange code proves nothing
     */
    AssemblyReader(Map<String, LineItem> items, boolean complete) {
        this.items = items;
        this.codes = new Names("a code of this book's items", items.keySet(), complete);
    }

    /** The assemblies by code, without those that another book replaces. */
    Map<String, Assembly> read(SourceNode list, Set<String> replaced) {
        Map<String, Assembly> assemblies = new LinkedHashMap<>();
        for (SourceNode node : list.elements()) {
            if (node.isObject() && replaced.contains(node.json().path("code").asText())) {
                continue;
            }
            Assembly assembly = ValueKind.object(this::assembly).read(node);
            String pointer = node.pointer() + "/code";
            if (!node.sheet().isSound(pointer)) {
                continue;
            }
            boolean item = items.containsKey(assembly.code());
            if (item || assemblies.putIfAbsent(assembly.code(), assembly) != null) {
                String found = "the code " + Excerpt.quoted(assembly.code())
                        + (item ? ", which an item has" : " a second time");
                node.sheet().fault(pointer, found, "each code once", "give one of the two another code");
            }
        }
        return assemblies;
    }

    private Assembly assembly(ObjectFields fields) {
        return new Assembly(
                fields.get("code", Texts.LABEL),
                fields.get("name", Texts.LABEL),
                fields.get("driver", Choices.of(Driver.class)),
                fields.filled("parts", ValueKind.object(this::part)),
                fields.list("notes", Texts.TEXT));
    }

    private Assembly.Part part(ObjectFields fields) {
        String code = fields.get("item", codes.kind());
        WrittenQuantity each = fields.get("each", WrittenQuantity.ANY);
        SourceNode written = fields.node().at("each");
        Optional<LineItem> item = Optional.ofNullable(items.get(code));
        if (!written.isSilent()
                && item.filter(known -> known.unit() != each.unit()).isPresent()) {
            String unit = item.get().unit().symbol();
            written.fault(written.written(), "a quantity in " + unit + ", the unit of the item", "state it in " + unit);
        }
        return new Assembly.Part(code, each.number());
    }
}
