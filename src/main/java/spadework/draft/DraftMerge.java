// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Two versions of a job that were made from one, put together field by field. What one side changed is taken; what both
 * changed to the same is taken once; what both changed otherwise is shown and never guessed.
 */
public final class DraftMerge {
    /**
     * A field that both sides changed.
     *
     * @param before what both began with; empty for nothing, as the other two
     */
    public record Clash(String pointer, String before, String mine, String theirs) {}

    /** Where a side has nothing at a place. */
    private static final DraftValue NOTHING = new DraftValue.Bare("");

    private static final List<String> NAMES = List.of("label", "id", "code", "number", "file");

    private final List<Clash> clashes = new ArrayList<>();

    private DraftMerge() {}

    /** What came of it: the job put together, with their side where both changed a field. */
    public record Merged(Draft draft, List<Clash> clashes) {
        public Merged {
            clashes = List.copyOf(clashes);
        }
    }

    /** Puts them together; where both changed a field, theirs stands and a clash tells of it. */
    public static Merged of(Draft before, Draft mine, Draft theirs) {
        DraftMerge merge = new DraftMerge();
        DraftValue all = merge.merged("", before.root(), mine.root(), theirs.root());
        return new Merged(new Draft((DraftValue.Entries) all, mine.outline()), merge.clashes);
    }

    private DraftValue merged(String pointer, DraftValue before, DraftValue mine, DraftValue theirs) {
        if (mine.equals(theirs) || mine.equals(before)) {
            return theirs;
        }
        if (theirs.equals(before)) {
            return mine;
        }
        if (mine instanceof DraftValue.Entries left && theirs instanceof DraftValue.Entries right) {
            Map<String, DraftValue> old = before instanceof DraftValue.Entries entries ? entries.values() : Map.of();
            return new DraftValue.Entries(members(pointer, old, left.values(), right.values()));
        }
        if (mine instanceof DraftValue.Rows left && theirs instanceof DraftValue.Rows right) {
            List<DraftValue> old = before instanceof DraftValue.Rows rows ? rows.values() : List.of();
            Optional<DraftValue> named = rows(pointer, old, left.values(), right.values());
            if (named.isPresent()) {
                return named.get();
            }
        }
        clashes.add(new Clash(pointer, shown(before), shown(mine), shown(theirs)));
        return theirs;
    }

    private Map<String, DraftValue> members(
            String pointer,
            Map<String, DraftValue> before,
            Map<String, DraftValue> mine,
            Map<String, DraftValue> theirs) {
        Set<String> keys = new LinkedHashSet<>(theirs.keySet());
        keys.addAll(mine.keySet());
        Map<String, DraftValue> all = new LinkedHashMap<>();
        for (String key : keys) {
            DraftValue value = merged(
                    pointer + "/" + key,
                    before.getOrDefault(key, NOTHING),
                    mine.getOrDefault(key, NOTHING),
                    theirs.getOrDefault(key, NOTHING));
            if (value != NOTHING) {
                all.put(key, value);
            }
        }
        return all;
    }

    /** Rows that have names of their own are put together row by row. */
    private Optional<DraftValue> rows(
            String pointer, List<DraftValue> before, List<DraftValue> mine, List<DraftValue> theirs) {
        Optional<Map<String, DraftValue>> old = named(before);
        Optional<Map<String, DraftValue>> left = named(mine);
        Optional<Map<String, DraftValue>> right = named(theirs);
        if (old.isEmpty() || left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        Set<String> all = new LinkedHashSet<>(old.get().keySet());
        all.retainAll(left.get().keySet());
        all.retainAll(right.get().keySet());
        List<String> first = List.copyOf(all);
        List<String> mineNow = among(left.get(), all);
        List<String> theirsNow = among(right.get(), all);
        if (!mineNow.equals(first) && !theirsNow.equals(first) && !mineNow.equals(theirsNow)) {
            // Both put the rows into an order of their own.
            return Optional.empty();
        }
        Map<String, DraftValue> whole = members(pointer, old.get(), left.get(), right.get());
        List<String> order = new ArrayList<>(
                mineNow.equals(first) ? right.get().keySet() : left.get().keySet());
        whole.keySet().stream().filter(name -> !order.contains(name)).forEach(order::add);
        order.retainAll(whole.keySet());
        return Optional.of(new DraftValue.Rows(order.stream().map(whole::get).toList()));
    }

    private static List<String> among(Map<String, DraftValue> rows, Set<String> names) {
        return rows.keySet().stream().filter(names::contains).toList();
    }

    private static Optional<Map<String, DraftValue>> named(List<DraftValue> rows) {
        Map<String, DraftValue> all = new LinkedHashMap<>();
        for (DraftValue row : rows) {
            Optional<String> name = row instanceof DraftValue.Entries entries
                    ? NAMES.stream()
                            .map(key -> entries.values().get(key))
                            .filter(DraftValue.Text.class::isInstance)
                            .map(text -> ((DraftValue.Text) text).words())
                            .findFirst()
                    : Optional.empty();
            if (name.isEmpty() || all.put(name.get(), row) != null) {
                return Optional.empty();
            }
        }
        return Optional.of(all);
    }

    /** A value on one line; of a list or a group all that it holds. */
    private static String shown(DraftValue value) {
        if (value instanceof DraftValue.Text text) {
            return text.words();
        }
        if (value instanceof DraftValue.Rows rows) {
            return rows.values().stream().map(DraftMerge::shown).collect(Collectors.joining("; "));
        }
        if (value instanceof DraftValue.Entries entries) {
            return entries.values().entrySet().stream()
                    .map(entry -> entry.getKey() + " " + shown(entry.getValue()))
                    .collect(Collectors.joining(", "));
        }
        return value instanceof DraftValue.Bare bare ? bare.token() : "";
    }
}
