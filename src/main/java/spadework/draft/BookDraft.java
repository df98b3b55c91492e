// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.draft.DraftValue.Entries;
import spadework.draft.DraftValue.Rows;
import spadework.draft.DraftValue.Text;
import spadework.spelling.FormerSpelling;

/**
 * A price book while it is worked on. What a change replaces stays in the item, dated and with its reason, so that the
 * book of any earlier day can be had back.
 */
public record BookDraft(Draft draft) {
    private static final String ITEMS = "/items";
    private static final String HISTORY = "history";

    /** The book of a text; nothing where the text is not one JSON object, each key once. */
    public static Optional<BookDraft> read(String text) {
        return Draft.read(text, FileSchema.book()).map(BookDraft::new);
    }

    /** The text as it is saved. */
    public String text() {
        return draft.text();
    }

    /** Whether it adds to the bundled book. */
    public boolean startsFromBundled() {
        return draft.shown("/startsFrom").equals("default");
    }

    /** Where an item stands in this file; empty for one that it does not hold itself. */
    public Optional<String> place(String code) {
        for (int i = 0; i < draft.rows(ITEMS); i++) {
            String place = Pointer.of(ITEMS, i);
            if (FormerSpelling.currentCode(draft.shown(place + "/code")).equals(FormerSpelling.currentCode(code))) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    /** An item as it stands in this file. */
    public Optional<Entries> item(String code) {
        return place(code).flatMap(draft::at).map(Entries.class::cast);
    }

    /** The same book with an item behind the last one, as it is: one that another book holds, to be changed here. */
    public BookDraft with(Entries item) {
        return new BookDraft(draft.inserted(ITEMS, draft.rows(ITEMS), item));
    }

    /** The same book with a new item, which remembers when and why it was added. */
    public BookDraft added(Entries item, LocalDate on, String reason) {
        BookDraft with = with(item.without(HISTORY));
        return with.dated(on).remembered(Pointer.of(ITEMS, with.draft.rows(ITEMS) - 1), on, reason, List.of());
    }

    /**
     * Changes an item of this file.
     *
     * @param values what is written where, as {@code material/cost} to {@code $33.00}; nothing takes the value out
     * @param on the day from which it holds
     * @throws IllegalArgumentException if the file does not hold the item
     */
    public BookDraft changed(String code, Map<String, String> values, LocalDate on, String reason) {
        String place = place(code).orElseThrow(() -> new IllegalArgumentException("no item " + code));
        Map<String, String> before = Leaves.of(item(code).orElseThrow());
        Draft edited = draft;
        for (Map.Entry<String, String> value : values.entrySet()) {
            edited = edited.typed(place + "/" + value.getKey(), value.getValue());
        }
        Map<String, String> after = Leaves.of((Entries) edited.at(place).orElseThrow());
        List<DraftValue> moved = moved(before, after);
        return moved.isEmpty() ? this : new BookDraft(edited).dated(on).remembered(place, on, reason, moved);
    }

    /** Gives an item up: new bids no longer choose it. */
    public BookDraft retired(String code, LocalDate on, String reason) {
        return changed(code, Map.of("retired/on", on.toString(), "retired/reason", reason), on, reason);
    }

    /** The book as it stood at the end of that day, as far as the items' histories tell. It is dated that day. */
    public BookDraft asOf(LocalDate day) {
        Draft then = draft;
        for (int i = draft.rows(ITEMS) - 1; i >= 0; i--) {
            then = undone(then, Pointer.of(ITEMS, i), i, day);
        }
        boolean later = draft.shown("/dated").compareTo(day.toString()) > 0;
        return new BookDraft(later ? then.typed("/dated", day.toString()) : then);
    }

    private static Draft undone(Draft draft, String place, int index, LocalDate day) {
        Draft then = draft;
        String history = Pointer.of(place, HISTORY);
        for (int h = draft.rows(history) - 1; h >= 0; h--) {
            String change = Pointer.of(history, h);
            if (draft.shown(change + "/on").compareTo(day.toString()) <= 0) {
                return then;
            }
            int values = draft.rows(change + "/changes");
            if (values == 0) {
                return then.without(Pointer.of(ITEMS, index));
            }
            for (int v = values - 1; v >= 0; v--) {
                String value = Pointer.of(change + "/changes", v);
                String what = place + "/" + draft.shown(value + "/what");
                boolean stood = draft.at(value + "/from").isPresent();
                then = stood ? then.typed(what, draft.shown(value + "/from")) : then.without(what);
            }
            then = then.without(change);
        }
        return then;
    }

    /** The papers name the day of the latest change as the book's. */
    private BookDraft dated(LocalDate on) {
        boolean later = draft.at("/dated").isEmpty() || draft.shown("/dated").compareTo(on.toString()) < 0;
        return later ? new BookDraft(draft.typed("/dated", on.toString())) : this;
    }

    private BookDraft remembered(String place, LocalDate on, String reason, List<DraftValue> moved) {
        Map<String, DraftValue> change = new LinkedHashMap<>();
        change.put("on", new Text(on.toString()));
        change.put("reason", new Text(reason));
        if (!moved.isEmpty()) {
            change.put("changes", new Rows(moved));
        }
        String history = Pointer.of(place, HISTORY);
        return new BookDraft(draft.inserted(history, draft.rows(history), new Entries(change)));
    }

    private static List<DraftValue> moved(Map<String, String> before, Map<String, String> after) {
        Set<String> places = new LinkedHashSet<>(before.keySet());
        places.addAll(after.keySet());
        List<DraftValue> moved = new ArrayList<>();
        for (String place : places) {
            String from = before.get(place);
            String to = after.get(place);
            if (from == null || !from.equals(to)) {
                Map<String, DraftValue> value = new LinkedHashMap<>();
                value.put("what", new Text(place));
                if (from != null) {
                    value.put("from", new Text(from));
                }
                if (to != null) {
                    value.put("to", new Text(to));
                }
                moved.add(new Entries(value));
            }
        }
        return moved;
    }
}
