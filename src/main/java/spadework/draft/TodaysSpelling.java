// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.draft.DraftValue.Entries;
import spadework.draft.DraftValue.Rows;
import spadework.draft.DraftValue.Text;
import spadework.spelling.FormerSpelling;

/**
 * A file of an earlier version as it is edited: what the format names itself is spelled as today, so that a field finds
 * it at its place. A key that stands there in both spellings stays as it is; the reader says so.
 */
final class TodaysSpelling {
    private static final Set<String> PLACES_AND_IDS =
            Set.of("/items/0/history/0/changes/0/what", "/acceptedStops/0/finding");

    private final FileSchema outline;

    private TodaysSpelling(FileSchema outline) {
        this.outline = outline;
    }

    static Entries of(Entries root, FileSchema outline) {
        return (Entries) new TodaysSpelling(outline).value(root, "");
    }

    private DraftValue value(DraftValue value, String pointer) {
        if (value instanceof Entries entries) {
            return entries(entries, pointer);
        }
        if (value instanceof Rows rows) {
            return new Rows(rows.values().stream()
                    .map(row -> value(row, pointer + "/0"))
                    .toList());
        }
        return value instanceof Text text ? text(text, pointer) : value;
    }

    private Entries entries(Entries entries, String pointer) {
        Map<String, DraftValue> values = new LinkedHashMap<>();
        entries.values().forEach((written, value) -> {
            String key = key(entries, written, pointer);
            values.put(key, value(value, Pointer.of(pointer, key)));
        });
        return new Entries(values);
    }

    private String key(Entries entries, String written, String pointer) {
        String current = FormerSpelling.current(written);
        boolean isFormer = !current.equals(written)
                && !entries.values().containsKey(current)
                && outline.at(Pointer.of(pointer, current)).isPresent();
        return isFormer ? current : written;
    }

    private Text text(Text text, String pointer) {
        String current = FormerSpelling.current(text.words());
        if (current.equals(text.words())) {
            return text;
        }
        Optional<SchemaField> spot = outline.at(pointer);
        boolean isNamed =
                spot.filter(place -> place.choices().contains(current)).isPresent() || PLACES_AND_IDS.contains(pointer);
        return isNamed ? new Text(current) : text;
    }
}
