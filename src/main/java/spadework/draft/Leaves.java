// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.LinkedHashMap;
import java.util.Map;
import spadework.draft.DraftValue.Bare;
import spadework.draft.DraftValue.Entries;
import spadework.draft.DraftValue.Rows;
import spadework.draft.DraftValue.Text;

/** The single values of an item by their place in it, as {@code material/cost}; its history is none of them. */
public final class Leaves {
    private Leaves() {}

    public static Map<String, String> of(Entries item) {
        Map<String, String> leaves = new LinkedHashMap<>();
        collect("", item.without("history"), leaves);
        return leaves;
    }

    private static void collect(String place, DraftValue value, Map<String, String> leaves) {
        if (value instanceof Text text) {
            leaves.put(place, text.words());
        } else if (value instanceof Bare bare) {
            leaves.put(place, bare.token());
        } else if (value instanceof Entries entries) {
            entries.values()
                    .forEach((key, inside) -> collect(place.isEmpty() ? key : place + "/" + key, inside, leaves));
        } else if (value instanceof Rows rows) {
            for (int i = 0; i < rows.values().size(); i++) {
                collect(place + "/" + i, rows.values().get(i), leaves);
            }
        }
    }
}
