// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What can stand in a file. Values are immutable, so that two drafts share all that they have in common. */
public sealed interface DraftValue {

    /** Words in quotes. */
    record Text(String words) implements DraftValue {}

    /** A number, {@code true}, {@code false} or {@code null}, spelled as in the file. */
    record Bare(String token) implements DraftValue {}

    /** An object; its keys keep their order. */
    record Entries(Map<String, DraftValue> values) implements DraftValue {
        public static final Entries NONE = new Entries(Map.of());

        public Entries {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }

        /**
         * The object with a value at a key; a new key takes its place in the given order.
         *
         * @param order keys as the format lists them; a key that is not among them comes last
         */
        Entries with(String key, DraftValue value, List<String> order) {
            Map<String, DraftValue> changed = new LinkedHashMap<>();
            int place = order.indexOf(key);
            boolean put = values.containsKey(key) || place < 0;
            for (Map.Entry<String, DraftValue> entry : values.entrySet()) {
                if (!put && order.indexOf(entry.getKey()) > place) {
                    changed.put(key, value);
                    put = true;
                }
                changed.put(entry.getKey(), entry.getValue());
            }
            changed.put(key, value);
            return new Entries(changed);
        }

        Entries without(String key) {
            Map<String, DraftValue> changed = new LinkedHashMap<>(values);
            changed.remove(key);
            return new Entries(changed);
        }
    }

    /** A list. */
    record Rows(List<DraftValue> values) implements DraftValue {
        static final Rows NONE = new Rows(List.of());

        public Rows {
            values = List.copyOf(values);
        }

        /** The list with a row changed, or added behind the last. */
        Rows with(int index, DraftValue value) {
            List<DraftValue> changed = new ArrayList<>(values);
            if (index == changed.size()) {
                changed.add(value);
            } else {
                changed.set(index, value);
            }
            return new Rows(changed);
        }

        Rows inserted(int index, DraftValue value) {
            List<DraftValue> changed = new ArrayList<>(values);
            changed.add(index, value);
            return new Rows(changed);
        }

        Rows without(int index) {
            List<DraftValue> changed = new ArrayList<>(values);
            changed.remove(index);
            return new Rows(changed);
        }
    }

    /** Whether there is nothing in it: an object or a list without content. */
    default boolean isEmpty() {
        return (this instanceof Entries entries && entries.values().isEmpty())
                || (this instanceof Rows rows && rows.values().isEmpty());
    }
}
