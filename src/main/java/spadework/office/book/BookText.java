// SPDX-License-Identifier: Apache-2.0
package spadework.office.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.draft.BookDraft;
import spadework.draft.Draft;
import spadework.draft.DraftValue.Entries;
import spadework.draft.DraftValue.Rows;
import spadework.draft.DraftValue.Text;
import spadework.draft.FileSchema;
import spadework.draft.Leaves;
import spadework.office.reply.TextColumns;
import spadework.pricebook.LineItem;
import spadework.spelling.FormerSpelling;
import spadework.wording.Wording;

/** Line items in words and as rows, and what is typed of them. */
public final class BookText {
    private static final Wording WORDS = Wording.beside(BookText.class);

    private static final Set<String> PRICES =
            Set.of("material/cost", "material/holds", "labor/perHour", "subcontract", "disposal");

    private BookText() {}

    /** Whether every word occurs somewhere in an item. */
    static boolean holds(LineItem item, List<String> words) {
        String all = Stream.concat(
                        Stream.of(
                                item.code(),
                                item.name(),
                                item.homeowner(),
                                item.source().text()),
                        item.notes().stream())
                .collect(Collectors.joining("\n"))
                .toLowerCase(Locale.ROOT);
        return words.stream().allMatch(word -> all.contains(word.toLowerCase(Locale.ROOT)));
    }

    /** Code, section, name and what it costs. */
    static List<String> row(LineItem item) {
        List<String> costs = new ArrayList<>();
        item.material().ifPresent(m -> costs.add(m.cost().text() + " a " + m.sold()));
        item.labor()
                .ifPresent(l -> costs.add(
                        l.perHour().toPlainString() + " " + item.unit().symbol() + "/h " + l.crew()));
        item.subcontract().ifPresent(s -> costs.add(s.text() + " subcontract"));
        item.disposal().ifPresent(d -> costs.add(d.text() + " disposal"));
        item.goodUntil().ifPresent(day -> costs.add("good until " + day));
        item.retired().ifPresent(end -> costs.add("retired " + end.on()));
        return List.of(
                item.code(), item.section().label(), item.unit().symbol(), item.name(), String.join("; ", costs));
    }

    /** All values of an item, and below them its history. */
    static List<String> of(Entries item, boolean bundled) {
        List<List<String>> rows = new ArrayList<>();
        Leaves.of(item).forEach((what, value) -> rows.add(List.of(what, value)));
        List<String> lines = new ArrayList<>(TextColumns.of(rows));
        if (bundled) {
            lines.add(WORDS.get("book-text.this-item-comes-from"));
        }
        if (item.values().get("history") instanceof Rows history) {
            lines.add("");
            history.values().forEach(change -> lines.addAll(change((Entries) change)));
        }
        return lines;
    }

    private static List<String> change(Entries change) {
        List<String> lines = new ArrayList<>(List.of(text(change, "on") + "  " + text(change, "reason")));
        if (change.values().get("changes") instanceof Rows values) {
            values.values()
                    .forEach(value -> lines.add("  " + text((Entries) value, "what") + ": "
                            + text((Entries) value, "from") + " → " + text((Entries) value, "to")));
        }
        return lines;
    }

    private static String text(Entries entries, String key) {
        return entries.values().get(key) instanceof Text text ? text.words() : "—";
    }

    /** A price that changes has a new source: the one that is typed, else the reason of the change. */
    static Map<String, String> sourced(Map<String, String> values, LocalDate on, String reason) {
        Map<String, String> all = new LinkedHashMap<>();
        values.forEach((place, value) -> all.put(FormerSpelling.current(place), value));
        if (all.keySet().stream().anyMatch(PRICES::contains)) {
            all.putIfAbsent("source/text", reason);
            all.putIfAbsent("source/on", on.toString());
        }
        return all;
    }

    /** An item made of another's values and of those that are typed. */
    static Entries item(Entries base, Map<String, String> values) {
        BookDraft book = new BookDraft(Draft.read("{}", FileSchema.book()).orElseThrow()).with(base);
        Draft draft = book.draft().without("/items/0/history").without("/items/0/retired");
        for (Map.Entry<String, String> value : values.entrySet()) {
            draft = draft.typed("/items/0/" + value.getKey(), value.getValue());
        }
        return (Entries) draft.at("/items/0").orElseThrow();
    }
}
