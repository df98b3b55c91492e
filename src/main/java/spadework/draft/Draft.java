// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.draft.DraftValue.Entries;
import spadework.draft.DraftValue.Rows;
import spadework.draft.DraftValue.Text;

/**
 * A file while it is edited: a job, or a price book. Every edit gives a new draft, which shares with the old one all
 * that did not change. What the outline does not know stays where it is.
 *
 * @param outline what the format of the file allows at each place
 */
public record Draft(Entries root, FileSchema outline) {

    /** A job in which nothing is written yet. */
    public static Draft empty() {
        return new Draft(Entries.NONE, FileSchema.job());
    }

    /** The draft of a job's text; nothing where the text is not one JSON object, each key once. */
    public static Optional<Draft> read(String text) {
        return read(text, FileSchema.job());
    }

    /**
     * The draft of a text in that format, with its keys and words in the spelling of today; nothing where the text is
     * not one JSON object, each key once.
     */
    public static Optional<Draft> read(String text, FileSchema outline) {
        return DraftText.read(text).map(root -> new Draft(TodaysSpelling.of(root, outline), outline));
    }

    /** The text as it is saved: the keys in their order, two spaces a level, what is short on one line. */
    public String text() {
        return JsonLayout.of(root);
    }

    /** The keys of the whole, in their order. */
    public List<String> keys() {
        return List.copyOf(root.values().keySet());
    }

    /** What stands at a place. */
    public Optional<DraftValue> at(String pointer) {
        DraftValue value = root;
        for (String key : Pointer.keys(pointer)) {
            value = inside(value, key);
        }
        return Optional.ofNullable(value);
    }

    /**
     * What a field at a place shows: the words, or the bare number as written; empty where nothing stands. The first
     * place of a group that is written as one value shows that value. A list of words is shown as a series.
     */
    public String shown(String pointer) {
        Optional<DraftValue> value = at(pointer).or(() -> first(pointer));
        return value.map(Draft::shown).orElse("");
    }

    private static String shown(DraftValue value) {
        if (value instanceof Rows rows) {
            return ListText.shown(rows);
        }
        return value instanceof Text words ? words.words() : value instanceof DraftValue.Bare bare ? bare.token() : "";
    }

    private Optional<DraftValue> first(String pointer) {
        String above = Pointer.above(pointer);
        boolean isFirst = !pointer.isEmpty()
                && outline.at(above)
                        .filter(spot -> spot.either()
                                && pointer.equals(Pointer.of(above, spot.keys().get(0))))
                        .isPresent();
        return isFirst
                ? at(above).filter(value -> value instanceof Text || value instanceof DraftValue.Bare)
                : Optional.empty();
    }

    /** How many rows a list has; 0 where there is none. */
    public int rows(String list) {
        return at(list).map(value -> value instanceof Rows rows ? rows.values().size() : 0)
                .orElse(0);
    }

    /** What was typed at a place, in the spelling of its kind; nothing typed takes the value out, but never a row. */
    public Draft typed(String pointer, String typed) {
        FieldKind kind = outline.at(pointer).map(SchemaField::kind).orElse(FieldKind.LABEL);
        if (kind == FieldKind.LIST) {
            Rows series = ListText.typed(typed, !ListText.holdsComma(at(pointer).orElse(Rows.NONE)));
            return series.isEmpty() ? without(pointer) : with(pointer, series);
        }
        boolean row = at(Pointer.above(pointer)).filter(Rows.class::isInstance).isPresent();
        return typed.isEmpty() && !row ? without(pointer) : with(pointer, kind.written(typed));
    }

    /** A value at a place; what has to hold it is made. A row may be added behind the last of a list. */
    public Draft with(String pointer, DraftValue value) {
        return new Draft((Entries) put(root, "", Pointer.keys(pointer), value), outline);
    }

    /** Takes a value out, and with it the groups and lists, but not the rows, that are then empty. */
    public Draft without(String pointer) {
        DraftValue left = taken(root, "", Pointer.keys(pointer));
        return new Draft(left instanceof Entries entries ? entries : Entries.NONE, outline);
    }

    /** A row put into a list before the one at that index. */
    public Draft inserted(String list, int index, DraftValue row) {
        Rows rows =
                at(list).filter(Rows.class::isInstance).map(Rows.class::cast).orElse(Rows.NONE);
        return with(list, rows.inserted(index, row));
    }

    /** A row without content put into a list before the one at that index. */
    public Draft insertedBlank(String list, int index) {
        boolean group = outline.at(list + "/0")
                .filter(spot -> spot.kind() == FieldKind.GROUP)
                .isPresent();
        return inserted(list, index, group ? Entries.NONE : new Text(""));
    }

    /** The same row once more, behind itself. */
    public Draft duplicated(String list, int index) {
        return at(Pointer.of(list, index))
                .map(row -> inserted(list, index + 1, row))
                .orElse(this);
    }

    /** A row at another index of its list. */
    public Draft moved(String list, int from, int to) {
        Optional<DraftValue> row = at(Pointer.of(list, from));
        if (row.isEmpty() || to < 0 || to >= rows(list)) {
            return this;
        }
        Rows rows = (Rows) at(list).orElseThrow();
        return with(list, rows.without(from).inserted(to, row.get()));
    }

    private static DraftValue inside(DraftValue value, String key) {
        if (value instanceof Entries entries) {
            return entries.values().get(key);
        }
        int index = value instanceof Rows ? index(key) : -1;
        return index >= 0 && index < ((Rows) value).values().size()
                ? ((Rows) value).values().get(index)
                : null;
    }

    private DraftValue put(DraftValue old, String pointer, List<String> keys, DraftValue value) {
        if (keys.isEmpty()) {
            return value;
        }
        String key = keys.get(0);
        String below = Pointer.of(pointer, key);
        Optional<SchemaField> spot = outline.at(pointer);
        DraftValue holder = spot.filter(SchemaField::either)
                .map(either -> spread(old, either))
                .orElse(old);
        DraftValue changed = put(inside(holder, key), below, keys.subList(1, keys.size()), value);
        boolean list = holder instanceof Rows
                || (!(holder instanceof Entries)
                        && spot.filter(s -> s.kind() == FieldKind.LIST).isPresent());
        if (list) {
            Rows rows = holder instanceof Rows there ? there : Rows.NONE;
            return rows.with(Math.min(index(key), rows.values().size()), changed);
        }
        Entries entries = holder instanceof Entries there ? there : Entries.NONE;
        Entries with = entries.with(key, changed, spot.map(SchemaField::keys).orElse(List.of()));
        return spot.map(format -> joined(with, format)).orElse(with);
    }

    private DraftValue taken(DraftValue old, String pointer, List<String> keys) {
        String key = keys.get(0);
        Optional<SchemaField> spot = outline.at(pointer);
        DraftValue holder = spot.filter(SchemaField::either)
                .map(either -> spread(old, either))
                .orElse(old);
        DraftValue there = inside(holder, key);
        if (there == null) {
            return old;
        }
        boolean isRow = holder instanceof Rows;
        DraftValue left =
                keys.size() == 1 ? null : taken(there, Pointer.of(pointer, key), keys.subList(1, keys.size()));
        boolean gone = left == null || (left.isEmpty() && !(isRow && left instanceof Entries));
        if (holder instanceof Rows rows) {
            return gone ? rows.without(index(key)) : rows.with(index(key), left);
        }
        Entries entries = (Entries) holder;
        Entries rest = gone ? entries.without(key) : entries.with(key, left, List.of());
        return spot.map(format -> joined(rest, format)).orElse(rest);
    }

    /** A group that was written as its first value alone, written out. */
    private static DraftValue spread(DraftValue value, SchemaField either) {
        boolean alone = value instanceof Text || value instanceof DraftValue.Bare;
        return alone ? new Entries(new LinkedHashMap<>(Map.of(either.keys().get(0), value))) : value;
    }

    /** A group that holds only its first value, written as that value where the format has it so. */
    private static DraftValue joined(Entries entries, SchemaField spot) {
        boolean alone = spot.either() && entries.values().size() == 1;
        DraftValue first = alone ? entries.values().get(spot.keys().get(0)) : null;
        return first == null ? entries : first;
    }

    private static int index(String key) {
        return key.matches("\\d{1,9}") ? Integer.parseInt(key) : Integer.MAX_VALUE;
    }
}
